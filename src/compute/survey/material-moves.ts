/**
 * What a stretch of track has too much of (above zero) or lacks (below zero), by the station in its
 * middle, m.
 */
export type StretchBalance = { readonly station: number; readonly excess: number }

/** Material to be moved; a side without a station is the stockpile. Same unit as the balances. */
export type Move = {
  readonly from: number | undefined
  readonly to: number | undefined
  readonly amount: number
  readonly distance: number
}

/** The shorter way around the ring. */
const apart = (a: number, b: number, rail: number): number =>
  Math.min(Math.abs(a - b), rail - Math.abs(a - b))

/**
 * Which stretch gives to which, the nearest pairs first: what a loader and a truck would do. What
 * no stretch needs goes to the stockpile, what none can give comes from it.
 * @param balances One a stretch, any unit of material.
 * @param rail Length of the ring, m.
 * @param least Amounts below this are not worth a trip.
 * @returns Moves, largest first within the ring, then those from or to the stockpile.
 */
export function materialMoves(
  balances: readonly StretchBalance[],
  rail: number,
  least: number,
): readonly Move[] {
  const left = balances.map((b) => b.excess)
  const pairs = balances
    .flatMap((a, i) =>
      balances.flatMap((b, j) =>
        a.excess > 0 && b.excess < 0 ? [{ i, j, distance: apart(a.station, b.station, rail) }] : [],
      ),
    )
    .sort((p, q) => p.distance - q.distance || p.i - q.i || p.j - q.j)
  const moves: Move[] = []
  for (const { i, j, distance } of pairs) {
    const amount = Math.min(left[i] ?? 0, -(left[j] ?? 0))
    if (amount <= 0 || amount < least) continue
    left[i] = (left[i] ?? 0) - amount
    left[j] = (left[j] ?? 0) + amount
    moves.push({ from: balances[i]?.station, to: balances[j]?.station, amount, distance })
  }
  const pile = left.flatMap((amount, i): Move[] => {
    const station = balances[i]?.station
    if (Math.abs(amount) < least || amount === 0) return []
    return [
      amount > 0
        ? { from: station, to: undefined, amount, distance: 0 }
        : { from: undefined, to: station, amount: -amount, distance: 0 },
    ]
  })
  return [...moves.sort((a, b) => b.amount - a.amount), ...pile]
}
