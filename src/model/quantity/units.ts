import table from '../../../shared/units.json' with { type: 'json' }

/** Exponents of length, mass, time, temperature, money, angle. */
export type Dims = readonly [number, number, number, number, number, number]

export type Unit = {
  readonly id: string
  readonly dims: Dims
  /** SI units in one of this unit. */
  readonly factor: number
  /** Added before multiplying, for thermometer scales: kelvin = (x + offset) × factor. */
  readonly offset: number
}

export const dimensionless: Dims = [0, 0, 0, 0, 0, 0]

const toDims = (d: readonly number[]): Dims => [
  d[0] ?? 0,
  d[1] ?? 0,
  d[2] ?? 0,
  d[3] ?? 0,
  d[4] ?? 0,
  d[5] ?? 0,
]

const byName = new Map<string, Unit>()
for (const row of table.units as readonly {
  id: string
  dims: number[]
  factor: number
  offset?: number
  aliases: string[]
}[]) {
  const unit: Unit = {
    id: row.id,
    dims: toDims(row.dims),
    factor: row.factor,
    offset: row.offset ?? 0,
  }
  for (const name of [row.id, ...row.aliases]) byName.set(name, unit)
}

/** All names under which a unit may be written. */
export const unitNames: readonly string[] = [...byName.keys()]

/** A single unit by id or alias; names longer than two letters may be written in any case. */
export const findUnit = (name: string): Unit | undefined =>
  byName.get(name) ?? (name.length > 2 ? byName.get(name.toLowerCase()) : undefined)

/** SI units in one of a unit of the table. @throws RangeError when the table does not have it. */
function factorOf(name: string): number {
  const unit = findUnit(name)
  if (!unit) throw new RangeError(`no unit ${name}`)
  return unit.factor
}

/** Lengths that formulas and rules of the trade are stated in, m. */
export const foot = factorOf('ft')
export const inch = factorOf('in')
export const mile = factorOf('mi')

export const sameDims = (a: Dims, b: Dims): boolean => a.every((x, i) => x === b[i])

export const multiplyDims = (a: Dims, b: Dims, power: number): Dims =>
  toDims(a.map((x, i) => x + power * (b[i] ?? 0)))
