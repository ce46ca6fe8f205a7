import { type Refusal, refuse } from '../calculation.ts'

/** Durations, s, of what is done after the last race, in this order. */
export type EveningWork = {
  readonly pulling: number
  readonly harrowing: number
  readonly watering: number
}

type Evening = {
  readonly pulled: number | Refusal<'after-light'>
  readonly harrowed: number | Refusal<'after-light'>
  readonly watered: number | Refusal<'after-light'>
  readonly done: number
}

/**
 * When each work after the last race ends, s after midnight. What would end after the light is left
 * for the morning, and so is all that follows it; what nobody here does takes no time.
 */
export function evening(after: number, light: number, work: EveningWork): Evening {
  const no = refuse('after-light')
  const pulled = after + work.pulling
  const harrowed = pulled + work.harrowing
  const ends = [pulled, harrowed, harrowed + work.watering]
  const inLight = ends.filter((end) => end <= light)
  const [first = no, second = no, third = no] = inLight
  return {
    pulled: first,
    harrowed: second,
    watered: third,
    done: inLight.at(-1) ?? after,
  }
}
