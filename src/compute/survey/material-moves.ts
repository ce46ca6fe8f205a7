/** What a stretch of track is out of its limits by, by the station in its middle, m. */
export type StretchBalance = {
  readonly station: number
  /** Above the wanted depth, of ground that lies too deep; any unit of material, as are the others. */
  readonly tooDeep: number
  /** Missing to the wanted depth, of ground that lies too thin. */
  readonly tooThin: number
  /** Above the wanted depth less what is missing to it, of all ground, within limits or not. */
  readonly net: number
}

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

/** From or to the stockpile: what a stretch out of its limits still has too much of or lacks. */
function atPile(b: StretchBalance, moved: number, least: number): Move[] {
  const left = b.net + moved
  if (Math.abs(left) < least || left === 0) return []
  if (left > 0 && b.tooDeep > 0)
    return [{ from: b.station, to: undefined, amount: left, distance: 0 }]
  if (left < 0 && b.tooThin > 0)
    return [{ from: undefined, to: b.station, amount: -left, distance: 0 }]
  return []
}

/**
 * Which stretch gives to which, the nearest pairs first: what a loader and a truck would do. Only
 * ground that lies too deep gives, and only ground that lies too thin is given: what is within its
 * limits stays. What no stretch needs goes to the stockpile, what none can give comes from it.
 * @param balances One a stretch.
 * @param rail Length of the ring, m.
 * @param least Amounts below this are not worth a trip.
 * @returns Moves, largest first within the ring, then those from or to the stockpile.
 */
export function materialMoves(
  balances: readonly StretchBalance[],
  rail: number,
  least: number,
): readonly Move[] {
  const over = balances.map((b) => b.tooDeep)
  const short = balances.map((b) => b.tooThin)
  const moved = balances.map(() => 0)
  const pairs = balances
    .flatMap((a, i) =>
      balances.map((b, j) => ({ i, j, distance: apart(a.station, b.station, rail) })),
    )
    .sort((p, q) => p.distance - q.distance || p.i - q.i || p.j - q.j)
  const moves: Move[] = []
  for (const { i, j, distance } of pairs) {
    const amount = Math.min(over[i] ?? 0, short[j] ?? 0)
    if (amount <= 0 || amount < least) continue
    over[i] = (over[i] ?? 0) - amount
    short[j] = (short[j] ?? 0) - amount
    moved[i] = (moved[i] ?? 0) - amount
    moved[j] = (moved[j] ?? 0) + amount
    moves.push({ from: balances[i]?.station, to: balances[j]?.station, amount, distance })
  }
  const pile = balances.flatMap((b, i) => atPile(b, moved[i] ?? 0, least))
  return [...moves.sort((a, b) => b.amount - a.amount), ...pile]
}
