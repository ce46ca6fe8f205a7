import { machineFor } from '../../compute/facts/collect.ts'
import { type Left, type Part, type WorkPlan, workDays } from '../../compute/people/work-days.ts'
import { addDays, dayNumber, secondsPerDay, workingDaysOff } from '../../model/day.ts'
import type { TableRows } from '../../model/manual/schedule.ts'
import type { Work, WorkJob } from '../../validate/schemas/plans.ts'
import { type ComposeContext, isKnown, itemsOf, namedNumber, printed } from '../context.ts'
import { raceWeek, shortDate } from '../dates.ts'
import { daysOf, isKept, raceIsClose } from './dated-rows.ts'

type Planned = {
  readonly work: Work
  /** Those of its people who are here. */
  readonly people: readonly string[]
  readonly plan: WorkPlan
  readonly jobOf: (id: string) => WorkJob
}

/**
 * The first day, from 1, that a notice given on day 1 allows. Where no race days say which day that
 * is, the notice is taken to run over as many weekends as it can.
 */
function firstDayAfter(notice: number, first: string | undefined): number {
  const starts = first === undefined ? weekFrom('2027-01-04') : [first]
  return Math.max(...starts.map((s) => dayNumber(workingDaysOff(s, notice)) - dayNumber(s) + 1))
}

/** Seven days, one of each name. */
const weekFrom = (day: string): readonly string[] =>
  Array.from({ length: 7 }, (_, i) => addDays(day, i))

/** Days of the plan, from 1, on which the machine for a work is here; undefined for all of them. */
function daysHere(
  { machine }: WorkJob,
  first: string | undefined,
  { facility }: ComposeContext,
): readonly number[] | undefined {
  const chosen = machine && machineFor(facility.file, machine)
  const days = chosen && facility.file.equipment?.[chosen.index]?.days
  return days && first ? days.map((d) => dayNumber(d) - dayNumber(first) + 1) : undefined
}

/** The first day of the plan: so many before the race, and none that is over where the race is close. */
function spanOf(planned: number, context: ComposeContext) {
  const race = raceWeek(context.facility.file)?.first
  if (race === undefined) return { first: undefined, days: planned }
  const left = dayNumber(race) - dayNumber(context.date)
  const days = raceIsClose(context) ? Math.max(1, Math.min(planned, left)) : planned
  return { first: addDays(race, -days), days }
}

/** The jobs that belong here, laid into the days; undefined where no plan has any. */
function plannedWork(context: ComposeContext): Planned | undefined {
  const work = itemsOf(context.library.schedules).find((s) => s.work)?.work
  const shift = work && namedNumber(work.shift, context)
  const span = work && namedNumber(work.days, context)
  if (!work || shift === undefined || span === undefined) return undefined
  const known = work.jobs.filter(
    (job) => isKept(job, context) && job.takes.every((name) => isKnown(name, context)),
  )
  const planned = Math.floor(span / secondsPerDay)
  const { first, days } = spanOf(planned, context)
  // Days that are over leave all others as far before the race as they were.
  const over = planned - days
  const crew = Math.floor(namedNumber(work.crew, context) ?? 2)
  const people = work.people.slice(0, Math.max(2, crew))
  const jobs = known.map((job, i) => ({
    id: String(i),
    people: job.people,
    time: job.takes.reduce((sum, name) => sum + (namedNumber(name, context) ?? 0), 0),
    from: Math.max(
      (job.from ?? 1) - over,
      1,
      job.notice === undefined ? 1 : firstDayAfter(daysOf([job.notice], context), first),
    ),
    to: job.to === undefined ? undefined : job.to - over,
    on: daysHere(job, first, context),
    daily: job.daily === true,
    split: job.split === true,
    by: job.by === undefined ? undefined : people.indexOf(job.by),
  }))
  const plan = workDays(jobs, { people: people.length, days, shift })
  const jobOf = (id: string): WorkJob => {
    const job = known[Number(id)]
    if (!job) throw new RangeError(`no job ${id}`)
    return job
  }
  return { work, people, plan, jobOf }
}

const everybody = ({ people, work }: Planned): string =>
  people.length > 2 ? work['all-more'] : work.all

const whoDoes = ({ who }: Part, planned: Planned): string =>
  who.length === planned.people.length
    ? everybody(planned)
    : who.map((p) => planned.people[p]).join(', ')

/** What the plan of the last days does on which day, in a few words. */
export function workTasks(
  context: ComposeContext,
): readonly { readonly date: string; readonly task: string }[] {
  const planned = plannedWork(context)
  const race = raceWeek(context.facility.file)?.first
  if (!(planned && race)) return []
  const { plan, jobOf } = planned
  return plan.days.flatMap(({ day, parts }) =>
    parts.flatMap(({ id }) => {
      const { short } = jobOf(id)
      const date = addDays(race, day - 1 - plan.days.length)
      return short === undefined ? [] : [{ date, task: short }]
    }),
  )
}

const timeOf = (seconds: number, context: ComposeContext): string =>
  printed(seconds, 'duration', context)

/** What is done every day, from which day on, by whom. */
export function workDailyRows(context: ComposeContext): TableRows {
  const planned = plannedWork(context)
  if (!planned) return []
  const { plan, jobOf } = planned
  const all = plan.days.flatMap((d) => d.daily.map((part) => ({ day: d.day, part })))
  const firsts = [...new Map(all.toReversed().map((a) => [a.part.id, a])).values()]
  return firsts
    .toSorted((a, b) => Number(a.part.id) - Number(b.part.id))
    .map(({ day, part }) => [
      jobOf(part.id).does,
      String(day),
      whoDoes(part, planned),
      timeOf(part.time, context),
    ])
}

/** Each day with its work, and how long everybody who works works on it. */
export function workDayRows(context: ComposeContext): TableRows {
  const planned = plannedWork(context)
  if (!planned) return []
  const { work, people, plan, jobOf } = planned
  const first = raceWeek(context.facility.file)?.first
  return plan.days.flatMap(({ day, parts, worked }) => {
    const date = first && shortDate(addDays(first, day - 1 - plan.days.length), context)
    const hours = worked
      .flatMap((w, p) => (w > 0 ? `${people[p]} ${timeOf(w, context)}` : []))
      .join('; ')
    const rows = [
      ...parts.map((part) => [
        jobOf(part.id).does,
        whoDoes(part, planned),
        timeOf(part.time, context),
      ]),
    ]
    if (rows.length === 0) rows.push([work.daily, everybody(planned), ''])
    return rows.map((row, i) =>
      i === 0
        ? [date === undefined ? String(day) : `${day}: ${date}`, ...row, hours]
        : ['', ...row, ''],
    )
  })
}

/** What two people cannot do in these days, with the hours that it would still take. */
export function workLeftRows(context: ComposeContext): TableRows {
  const planned = plannedWork(context)
  if (!planned) return []
  const byJob = new Map<string, Left>()
  for (const l of planned.plan.left)
    byJob.set(l.id, { ...l, time: l.time + (byJob.get(l.id)?.time ?? 0) })
  return [...byJob.values()].map(({ id, time }) => [planned.jobOf(id).does, timeOf(time, context)])
}
