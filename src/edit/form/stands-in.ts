import type { Capability } from '../../model/capability.ts'
import { type FactSpec, factSpec, type Typical } from '../../model/fact-spec.ts'
import { type Material, materials } from '../../model/oval-choices.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import type { Path } from '../../read/read-yaml.ts'
import { textAt, valueAt } from './data.ts'
import type { Question } from './question.ts'

/** What is reckoned with as long as nobody has said it. */
export type StandsIn = {
  readonly value: string
  /** Whether what rests on it is an estimate: rules and choices make none. */
  readonly estimate: boolean
}

const isMaterial = (text: string | undefined): text is Material =>
  materials.some((material) => material === text)

const isRule = (typical: Typical): boolean => ['rule', 'choice'].includes(typical.basis)

/** Fields that the works of a machine ask for, in the order of the works. */
export const fieldsFor = (can: readonly string[], fields: readonly string[]): readonly string[] =>
  fields.filter((field) =>
    can.some((work) => factSpec(`gear.${work}.${field}`)?.typical('stone-dust') !== undefined),
  )

/** What a machine can do, as the file says it. */
export function worksAt(data: unknown, index: number): readonly Capability[] {
  const can = valueAt(data, ['equipment', index, 'can'])
  return Array.isArray(can) ? (can as Capability[]) : []
}

function specsFor(question: Question, data: unknown, at: Path): readonly FactSpec[] {
  if (question.kind !== 'quantity') return []
  const [top, index, field] = at
  if (top !== 'equipment' || typeof index !== 'number') return [question.spec]
  return worksAt(data, index).flatMap((work) => factSpec(`gear.${work}.${String(field)}`) ?? [])
}

/** What stands in for an answer that nobody has given; nothing where it is just missing. */
export function standsIn(
  question: Question,
  data: unknown,
  at: Path,
  system: UnitSystem,
): StandsIn | undefined {
  const said = textAt(data, ['cushion', 'material'])
  const material = isMaterial(said) ? said : 'stone-dust'
  const typical = specsFor(question, data, at)
    .map((spec) => spec.typical(material))
    .find((found) => found !== undefined)
  return typical && { value: typical[system], estimate: !isRule(typical) }
}
