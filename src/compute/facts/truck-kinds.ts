import { type FactPath, factSpec, type GearField } from '../../model/fact-spec.ts'
import { isEstimated } from '../../model/figure.ts'
import type { Quantity } from '../../model/quantity/read-quantity.ts'
import { usualValue } from '../../model/usual-value.ts'
import type { SourceTree } from '../../read/read-yaml.ts'
import type { FacilityFile } from '../../validate/schemas/facility.ts'
import { type KnownValue, saidAt } from './known.ts'

type Known = Map<string, KnownValue>

/** A field of a machine that sprays: as its entry says, else as is usual. */
type Field = { readonly si: number; readonly provenance: KnownValue['provenance'] }

type Truck = Readonly<Record<'count' | 'load' | 'away' | 'flow' | 'spray-width', Field>>

type Machines = NonNullable<FacilityFile['equipment']>

function fieldOf(field: GearField, index: number, file: FacilityFile, tree: SourceTree): Field {
  const machine = file.equipment?.[index] as Readonly<Record<string, unknown>> | undefined
  const said = machine?.[field] as Quantity | undefined
  if (said) {
    return saidAt(said, tree.placeOf(['equipment', index, field]))
  }
  const usual = factSpec(`gear.spray.${field}`)?.typical(file.cushion.material)
  if (!usual) throw new RangeError(`nothing is usual for the ${field} of a water truck`)
  const { sources, note, basis } = usual
  return {
    si: usualValue(usual, file.units),
    provenance: { kind: basis === 'choice' ? 'choice' : 'typical', sources, note },
  }
}

/** Worked out from several fields: no surer than the least sure of them. */
const from = (si: number, ...fields: readonly Field[]): Field => ({
  si,
  provenance: (fields.find((f) => isEstimated(f.provenance)) ?? fields[0])
    ?.provenance as Field['provenance'],
})

function truckOf(index: number, file: FacilityFile, tree: SourceTree): Truck {
  const field = (name: GearField): Field => fieldOf(name, index, file, tree)
  const [tank, usable, flow, travel] = [
    field('tank'),
    field('usable'),
    field('flow'),
    field('travel'),
  ]
  const load = tank.si * usable.si
  return {
    count: field('count'),
    load: from(load, tank, usable),
    away: from(travel.si + load / flow.si, flow, travel),
    flow,
    'spray-width': field('spray-width'),
  }
}

const measures = ['load', 'away', 'flow', 'spray-width'] as const

/** Trucks that differ in nothing that counts. */
const alike = (a: Truck, b: Truck): boolean =>
  measures.every((name) => Math.abs(a[name].si - b[name].si) <= 1e-6 * a[name].si)

/** Trucks that are alike, as one kind with more of them. */
function kindsOf(trucks: readonly Truck[]): readonly Truck[] {
  const kinds: Truck[] = []
  for (const truck of trucks) {
    const same = kinds.findIndex((k) => alike(k, truck))
    const kind = kinds[same]
    if (kind) kinds[same] = { ...kind, count: from(kind.count.si + truck.count.si, truck.count) }
    else kinds.push(truck)
  }
  return kinds
}

/** Several kinds as one, with their mean. */
function mixed(kinds: readonly Truck[]): Truck | undefined {
  const [first] = kinds
  if (!first) return undefined
  const all = kinds.reduce((sum, k) => sum + k.count.si, 0)
  const mean = (name: (typeof measures)[number]): Field =>
    from(
      kinds.reduce((sum, k) => sum + k.count.si * k[name].si, 0) / all,
      ...kinds.map((k) => k[name]),
    )
  return {
    count: from(all, first.count),
    load: mean('load'),
    away: mean('away'),
    flow: mean('flow'),
    'spray-width': mean('spray-width'),
  }
}

/** What an hour of each costs or burns, as the file says; nothing unless it says it of all. */
function meanHour(
  field: 'cost' | 'fuel',
  sprays: readonly number[],
  file: FacilityFile,
  tree: SourceTree,
): Field | undefined {
  const said = sprays.flatMap((i) => {
    const machine = file.equipment?.[i] as Readonly<Record<string, unknown>> | undefined
    const si = (machine?.[field] as Quantity | undefined)?.si
    return si === undefined ? [] : [{ si, count: fieldOf('count', i, file, tree).si }]
  })
  const differ = said.some((s) => s.si !== said[0]?.si)
  if (said.length < sprays.length || !differ) return undefined
  const all = said.reduce((sum, s) => sum + s.count, 0)
  const at = tree.placeOf(['equipment', sprays[1] ?? 0, field])
  const si = said.reduce((sum, s) => sum + s.count * s.si, 0) / all
  return { si, provenance: { kind: 'stated', at } }
}

/**
 * All machines that spray. The first in the file is the water truck of all figures; trucks like it
 * add to its number, others are a second kind, and whatever is left a third. What an hour of them
 * costs and burns is their mean where they differ in it.
 */
export function waterTrucks(file: FacilityFile, tree: SourceTree, known: Known): void {
  const machines: Machines = file.equipment ?? []
  const sprays = machines.flatMap((m, i) => (m.can.includes('spray') ? [i] : []))
  if (sprays.length < 2) return
  const [first, second, ...others] = kindsOf(sprays.map((i) => truckOf(i, file, tree)))
  const [, another] = sprays
  if (
    first &&
    another !== undefined &&
    first.count.si > truckOf(sprays[0] ?? 0, file, tree).count.si
  )
    known.set('gear.spray.count', {
      si: first.count.si,
      provenance: { kind: 'stated', at: tree.placeOf(['equipment', another, 'can']) },
    })
  const put = (prefix: 'second-truck' | 'third-truck', truck: Truck | undefined): void => {
    if (!truck) return
    for (const name of ['count', ...measures] as const) {
      const path: FactPath = `${prefix}.${name}`
      known.set(path, truck[name])
    }
  }
  for (const field of ['cost', 'fuel'] as const) {
    const hour = meanHour(field, sprays, file, tree)
    if (hour) known.set(`water-trucks.${field}`, hour)
  }
  put('second-truck', second)
  put('third-truck', mixed(others))
}
