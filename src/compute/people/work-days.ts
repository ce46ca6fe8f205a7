/** Work to be done in a number of days; times in seconds. */
export type Job = {
  readonly id: string
  /** How many work on it at once; it takes each of them this long. */
  readonly people: number
  readonly time: number
  /** The first day on which it can be done, from 1; daily work is done on each day from then on. */
  readonly from: number
  /** The last day on which it may still be done. */
  readonly to?: number | undefined
  /** The only days on which it can be done, such as those of a borrowed machine. */
  readonly on?: readonly number[] | undefined
  readonly daily: boolean
  /** May be stopped in the evening and taken up again. */
  readonly split: boolean
  /** Who is among them, counted from 0; the others are those who have the most room. */
  readonly by?: number | undefined
}

/** Some work on one day, by people counted from 0. */
export type Part = { readonly id: string; readonly who: readonly number[]; readonly time: number }

type WorkDay = {
  readonly day: number
  readonly daily: readonly Part[]
  readonly parts: readonly Part[]
  /** What each person works on this day. */
  readonly worked: readonly number[]
}

/** What found no room: of daily work each time that it was missed. */
export type Left = { readonly id: string; readonly time: number }

export type WorkPlan = { readonly days: readonly WorkDay[]; readonly left: readonly Left[] }

export type Crew = { readonly people: number; readonly days: number; readonly shift: number }

/** Shorter than this is not worth taking up a long job for. */
const leastPart = 1800

/** What is smaller than this is nought. */
const slack = 1e-6

/** Those with the most room, the first of equals; nobody where a job asks for more than there are. */
const freest = (room: readonly number[], people: number): readonly number[] =>
  people > room.length
    ? []
    : room
        .map((free, person) => ({ free, person }))
        .sort((a, b) => b.free - a.free || a.person - b.person)
        .slice(0, people)
        .map(({ person }) => person)
        .sort((a, b) => a - b)

/** Whether a job can be done on a day: after its first, before its last, and while its machine is here. */
const fallsOn = ({ from, to, on }: Job, day: number): boolean =>
  day >= from && day <= (to ?? day) && (on?.includes(day) ?? true)

/** Books a job on a day, whole or as much as there is room for; what it takes is off the room. */
function book(job: Job, time: number, room: number[]): Part | undefined {
  const who = freest(
    room.map((free, person) => (person === job.by ? Infinity : free)),
    job.people,
  )
  if (who.length === 0) return undefined
  const free = Math.min(...who.map((p) => room[p] ?? 0))
  const fits = free + slack >= time
  if (!(fits || (job.split && free >= leastPart))) return undefined
  const part = Math.min(free, time)
  for (const p of who) room[p] = (room[p] ?? 0) - part
  return { id: job.id, who, time: part }
}

/**
 * Lays work into the days of a small crew: daily work first on each day, then every other job, in
 * order, on the first day that has room, and last what may be done in pieces. Nobody ever works longer than a shift.
 * @throws RangeError for days or a shift that are none.
 */
export function workDays(jobs: readonly Job[], { people, days, shift }: Crew): WorkPlan {
  if (!(people >= 1 && days >= 1 && shift > 0 && days < Infinity && shift < Infinity))
    throw new RangeError('a crew has people, days and a shift')
  const left: Left[] = []
  const plan = Array.from({ length: days }, (_, i) => {
    const room = Array.from({ length: people }, () => shift)
    const daily = jobs.flatMap((job): Part[] => {
      if (!(job.daily && fallsOn(job, i + 1))) return []
      const part = book({ ...job, split: false }, job.time, room)
      if (!part) left.push({ id: job.id, time: job.time })
      return part ? [part] : []
    })
    return { day: i + 1, daily, parts: [] as Part[], room }
  })
  const once = jobs.filter((j) => !j.daily)
  // What waits for a borrowed machine has its days first. What can be stopped in the evening takes
  // what is left by what cannot.
  const bound = once.filter((j) => j.on)
  const free = once.filter((j) => !j.on)
  for (const job of [...bound, ...free.filter((j) => !j.split), ...free.filter((j) => j.split)]) {
    let rest = job.time
    for (const { day, parts, room } of plan) {
      if (rest <= slack || !fallsOn(job, day)) continue
      const part = book(job, rest, room)
      if (part) parts.push(part)
      rest -= part?.time ?? 0
    }
    if (rest > slack) left.push({ id: job.id, time: rest })
  }
  return {
    days: plan.map(({ room, ...day }) => ({ ...day, worked: room.map((free) => shift - free) })),
    left,
  }
}
