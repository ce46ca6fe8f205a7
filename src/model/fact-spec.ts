import table from '../../shared/facts.json' with { type: 'json' }
import { type Capability, capabilities } from './capability.ts'
import type { Material } from './oval-choices.ts'
import type { KindName, UnitSystem } from './quantity/kinds.ts'

/** What stands in where a facility says nothing. */
export type Typical = {
  readonly us: string
  readonly metric: string
  readonly basis: 'rule' | 'choice' | 'published' | 'common-practice' | 'memory'
  readonly sources: readonly string[]
  readonly note: string
}

/** A field that any machine may have, such as `width`. */
export type GearField = keyof typeof table.gear

/** Path of a fact in the facility file, or of a field of the machine chosen for a work. */
export type FactPath = keyof typeof table.facts | `gear.${Capability}.${GearField}`

/** What is known of a quantity before any facility has said anything. */
export type FactSpec = {
  readonly path: string
  readonly label: string
  readonly kind: KindName
  /** Believable values, closed, as people write them. */
  readonly range: readonly [string, string]
  readonly howTo: string
  /** A value as people write it, where the usual one or that of its kind would mislead. */
  readonly example: Readonly<Record<UnitSystem, string>> | undefined
  readonly typical: (material: Material) => Typical | undefined
}

type Row = {
  label: string
  kind: string
  range: string[]
  howTo: string
  example?: Record<UnitSystem, string>
  typical?: Typical | { byMaterial: Record<Material, Typical> }
}

const rows = table.facts as unknown as Readonly<Record<string, Row>>
const gearRows = table.gear as unknown as Readonly<Record<string, Row>>
const gearTypical = table.gearTypical as unknown as Readonly<Record<string, Typical>>

/** Fields that any machine may have, such as `width`. */
export const gearFields: readonly string[] = Object.keys(gearRows)

function toSpec(path: string, row: Row, typical: FactSpec['typical']): FactSpec {
  const [low = '', high = ''] = row.range
  return {
    path,
    label: row.label,
    kind: row.kind as KindName,
    range: [low, high],
    howTo: row.howTo,
    example: row.example,
    typical,
  }
}

const specs = new Map<string, FactSpec>()
for (const [path, row] of Object.entries(rows)) {
  const t = row.typical
  specs.set(
    path,
    toSpec(path, row, (material) => (t && 'byMaterial' in t ? t.byMaterial[material] : t)),
  )
}
for (const capability of capabilities) {
  for (const [field, row] of Object.entries(gearRows)) {
    const path = `gear.${capability}.${field}`
    specs.set(
      path,
      toSpec(path, row, () => gearTypical[path]),
    )
  }
}

/** The specification of a fact by its path in the facility file, or `gear.<capability>.<field>`. */
export const factSpec = (path: string): FactSpec | undefined => specs.get(path)

/** The kind of a fact; undefined for a name that is none. */
export const kindOfFact = (path: string): KindName | undefined => specs.get(path)?.kind

/** The specification of a machine's field, as it stands in the equipment list. */
export const gearSpec = (field: string): FactSpec | undefined => {
  const row = gearRows[field]
  return row && toSpec(`equipment.${field}`, row, () => undefined)
}

// The keys are those of the table, from which the type is made.
export const factPaths = [...specs.keys()] as readonly FactPath[]

/** Tells whether a name from content is the path of a fact. */
export const isFactPath = (name: string): name is FactPath => specs.has(name)

/** The capability of a gear path, such as `grade` of `gear.grade.width`. */
export const capabilityOf = (path: string): Capability | undefined =>
  capabilities.find((c) => path.startsWith(`gear.${c}.`))
