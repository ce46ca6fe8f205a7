import type { RollingBlock } from '../../../model/manual/charts.ts'

/** Ground between two distances from the rail, m. */
export type Band = readonly [from: number, to: number]

/** Prints of all tires of a truck whose inside tires run at a place, m from the rail. */
export const printsAt = (
  { tread, perSide, gap, track }: RollingBlock,
  place: number,
): readonly Band[] =>
  [0, track].flatMap((side) =>
    Array.from({ length: perSide }, (_, tire): Band => {
      const from = place + side + tire * (tread + gap)
      return [from, from + tread]
    }),
  )

/** One lap of one truck. */
type TruckLap = {
  readonly truck: number
  readonly place: number
  /** As printed, in the first two blocks. */
  readonly at: string | undefined
}

/**
 * Laps of all trucks in the order in which they are driven, once over the whole width: trucks take
 * turns, so that each row holds one lap of every truck.
 */
export function rollingRows(block: RollingBlock): readonly (readonly TruckLap[])[] {
  const all = block.starts.flatMap((start, b) =>
    block.places.map(({ offset, at, next }) => ({
      place: start + offset,
      at: [at, next][b],
    })),
  )
  const rows: TruckLap[][] = []
  for (const [i, lap] of all.entries()) {
    const truck = (i % block.trucks) + 1
    if (truck === 1) rows.push([])
    rows.at(-1)?.push({ truck, ...lap })
  }
  return rows
}

/** Bands that touch or overlap as one, in their order. */
export function merged(bands: readonly Band[]): readonly Band[] {
  const out: [number, number][] = []
  for (const [from, to] of [...bands].sort((a, b) => a[0] - b[0])) {
    const last = out.at(-1)
    if (last && from <= last[1] + 1e-9) last[1] = Math.max(last[1], to)
    else out.push([from, to])
  }
  return out
}
