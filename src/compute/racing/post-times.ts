/** The card of a race day; times in s. */
export type Card = {
  readonly first: number
  readonly interval: number
  /** A break stands in place of an interval after every so many races; 0 for none. */
  readonly breakEvery: number
  readonly pause: number
}

/** How many breaks the program has before a race, counted from 1. */
export const breaksBefore = (race: number, { breakEvery }: Pick<Card, 'breakEvery'>): number =>
  breakEvery > 0 ? Math.floor((race - 1) / breakEvery + 1e-9) : 0

/** When a race, counted from 1, starts: s after midnight, beyond a day on the next one. */
export const postTime = (race: number, card: Card): number =>
  card.first + (race - 1) * card.interval + breaksBefore(race, card) * (card.pause - card.interval)
