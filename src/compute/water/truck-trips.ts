/** Water trucks that are alike: how many, m³ on the track from a load, s at the hose, s away from it. */
export type TruckKind = {
  readonly count: number
  readonly load: number
  readonly fill: number
  readonly away: number
}

/** One load of a round, in the order in which they are begun; s from the start of the round. */
export type Trip = {
  /** Which kind of truck, from 0. */
  readonly kind: number
  readonly fills: number
  readonly full: number
  readonly down: number
}

/** What is within this share of the water is enough. */
const slack = 1e-9

/**
 * Time (s) of a number of loads with trucks that are alike: a load begins when a truck is back, and a
 * hose is free. Load n waits for k rounds of its truck and for fillings of other trucks between them,
 * in whatever order; the worst of these is when it begins.
 * @param points Filling points.
 */
export function timeOfLoads(
  loads: number,
  { count, fill, away }: Omit<TruckKind, 'load'>,
  points: number,
): number {
  const cycle = fill + away
  let begins = 0
  for (let k = 0; k * count <= loads - 1; k++)
    begins = Math.max(begins, k * cycle + Math.floor((loads - 1 - k * count) / points) * fill)
  return loads > 0 ? begins + cycle : 0
}

type Next = Trip & { readonly truck: number; readonly load: number }

/**
 * Who goes next: whoever has the load down first, or whoever is at the hose first, with the larger, the
 * smaller or the quicker load where several are. None of these is best for all trucks.
 */
const orders: readonly ((a: Next, b: Next) => number)[] = [
  (a, b) => a.down - b.down,
  (a, b) => a.fills - b.fills || b.load - a.load,
  (a, b) => a.fills - b.fills || a.load - b.load,
  (a, b) => a.fills - b.fills || a.down - b.down,
]

type Round = {
  readonly kinds: readonly TruckKind[]
  readonly points: number
  readonly need: number
  /** No load is begun that would not be down before this, s. */
  readonly before: number
}

/** A round driven by some trucks in an order; undefined where it is not done in time. */
function drive(
  trucks: readonly number[],
  order: (a: Next, b: Next) => number,
  { kinds, points, need, before }: Round,
): readonly Trip[] | undefined {
  const back = trucks.map(() => 0)
  const hoses = Array.from({ length: points }, () => 0)
  const trips: Trip[] = []
  for (let put = 0; put < need * (1 - slack); ) {
    const hose = hoses.indexOf(Math.min(...hoses))
    const each = trucks
      .map((kind, truck): Next => {
        const { fill, away, load } = kinds[kind] as TruckKind
        const fills = Math.max(back[truck] ?? 0, hoses[hose] ?? 0)
        return { truck, kind, load, fills, full: fills + fill, down: fills + fill + away }
      })
      .filter(({ down }) => down < before)
    if (each.length === 0) return undefined
    const { truck, load, ...trip } = each.reduce((a, b) => (order(b, a) < 0 ? b : a))
    back[truck] = trip.down
    hoses[hose] = trip.full
    put += load
    trips.push(trip)
  }
  return withoutSpare(trips, kinds, need)
}

/** The trips without those, latest first, that are not needed. */
function withoutSpare(trips: readonly Trip[], kinds: readonly TruckKind[], need: number) {
  const loadOf = ({ kind }: Trip): number => kinds[kind]?.load ?? 0
  const kept = new Set(trips)
  let put = trips.reduce((sum, t) => sum + loadOf(t), 0)
  for (const trip of [...trips].sort((a, b) => b.down - a.down)) {
    if (put - loadOf(trip) < need * (1 - slack)) continue
    kept.delete(trip)
    put -= loadOf(trip)
  }
  return trips.filter((t) => kept.has(t))
}

/** All ways of taking none, some or all trucks of each kind. */
const choices = (kinds: readonly TruckKind[]): readonly (readonly number[])[] =>
  kinds.reduce<readonly (readonly number[])[]>(
    (ways, { count }, kind) =>
      ways.flatMap((way) =>
        Array.from({ length: count + 1 }, (_, n) => [
          ...way,
          ...Array.from({ length: n }, () => kind),
        ]),
      ),
    [[]],
  )

const endOf = (trips: readonly Trip[]): number => Math.max(0, ...trips.map((t) => t.down))

/** The quickest of the rounds that are driven in each order by all choices of trucks. */
function quickest(ways: readonly (readonly number[])[], round: Round): readonly Trip[] | undefined {
  const driven = ways.flatMap((way) =>
    orders.flatMap((order) => {
      const trips = drive(way, order, round)
      return trips ? [trips] : []
    }),
  )
  return driven.reduce<readonly Trip[] | undefined>(
    (a, b) => (a === undefined || endOf(b) < endOf(a) - slack ? b : a),
    undefined,
  )
}

/**
 * The loads of one round with trucks that are not alike. A truck that would only stand in the way of
 * the others stays away, so that one more truck never makes a round longer; and no load is begun that
 * others have down sooner.
 * @param need Water of the round, m³.
 * @param points Filling points: so many trucks fill at once.
 */
export function tripsOfRound(
  kinds: readonly TruckKind[],
  points: number,
  need: number,
): readonly Trip[] {
  const ways = choices(kinds).filter((way) => way.length > 0)
  let best: readonly Trip[] = []
  for (let before = Number.POSITIVE_INFINITY; ; before = endOf(best) * (1 - slack)) {
    const better = quickest(ways, { kinds, points, need, before })
    if (!better || better.length === 0) return best
    best = better
  }
}

/** The time (s) of such a round. */
export const timeOfRound = (trips: readonly Trip[]): number => endOf(trips)
