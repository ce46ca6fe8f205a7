import type { TableRows } from '../../model/manual/schedule.ts'
import { type ComposeContext, itemsOf, printed } from '../context.ts'

/** A lesson, as the table of modules says it. */
type Lesson = { readonly title: string; readonly who: string; readonly where: string }

/** Authors' rows of a table of any plan. */
const rowsOf = (id: string, { library }: ComposeContext): readonly (readonly string[])[] =>
  itemsOf(library.schedules)
    .flatMap((s) => s.tables)
    .find((t) => t.id === id)
    ?.rows?.map((r) => r.cells) ?? []

const lessonsOf = (context: ComposeContext): readonly Lesson[] =>
  rowsOf('modules', context).map(([title = '', , who = '', where = '']) => ({ title, who, where }))

/** A lesson with its time, seconds of the day. */
type Timed = Lesson & { readonly from: number; readonly to: number }

/** Lessons one after another from an hour on, each as long as the figure says. */
function timed(
  context: ComposeContext,
  from: 'practice.training-start' | 'practice.training-evening',
  lessons: readonly Lesson[],
): readonly Timed[] {
  const times = context.engine.siOfAll({ start: from, long: 'lesson.module' })
  if (!times) return []
  return lessons.map((lesson, i) => ({
    ...lesson,
    from: times.start + i * times.long,
    to: times.start + (i + 1) * times.long,
  }))
}

const clock = (time: number, context: ComposeContext): string => printed(time, 'clock', context)
const minutes = (time: number, context: ComposeContext): string => printed(time, 'minutes', context)

const rowOf = ({ title, who, where, from, to }: Timed, context: ComposeContext) => [
  clock(from, context),
  clock(to, context),
  minutes(to - from, context),
  title,
  who,
  where,
]

const halfDay = (context: ComposeContext): readonly Timed[] =>
  timed(context, 'practice.training-start', lessonsOf(context))

/** All lessons in one morning: time, minutes, lesson, who, where. */
export const halfDayRows = (context: ComposeContext): TableRows =>
  halfDay(context).map((t) => rowOf(t, context))

/** Half of the lessons on each of two evenings. */
export function eveningRows(context: ComposeContext): TableRows {
  const lessons = lessonsOf(context)
  const half = Math.ceil(lessons.length / 2)
  return [lessons.slice(0, half), lessons.slice(half)].flatMap((part, i) =>
    timed(context, 'practice.training-evening', part).map((t) => [
      String(i + 1),
      ...rowOf(t, context),
    ]),
  )
}

/** Stretches of time without a gap. */
function spansOf(
  lessons: readonly Timed[],
): readonly { readonly from: number; readonly to: number }[] {
  const spans: { from: number; to: number }[] = []
  for (const { from, to } of lessons) {
    const last = spans.at(-1)
    if (last && Math.abs(last.to - from) < 1) last.to = to
    else spans.push({ from, to })
  }
  return spans
}

/** Whether a lesson is for a role; a lesson that names none of the roles is for all. */
const isFor = ({ who }: Lesson, role: string, roles: readonly string[]): boolean => {
  const named = who.split(', ').map((w) => w.toLowerCase())
  return named.includes(role) || !named.some((w) => roles.includes(w))
}

/** What each role takes in the half day: lessons, minutes, and when to be there. */
export function roleRows(context: ComposeContext): TableRows {
  const names = rowsOf('training-roles', context).map(([role = '']) => role)
  const roles = names.map((n) => n.toLowerCase())
  return names.map((name) => {
    const own = halfDay(context).filter((l) => isFor(l, name.toLowerCase(), roles))
    return [
      name,
      own.map((l) => l.title.split(' ')[0]).join(', '),
      minutes(
        own.reduce((sum, l) => sum + l.to - l.from, 0),
        context,
      ),
      spansOf(own)
        .map((s) => `${clock(s.from, context)}–${clock(s.to, context)}`)
        .join('; '),
    ]
  })
}

/** A line for each volunteer, and two to spare. */
export const signOffRows = ({ engine }: ComposeContext): TableRows =>
  Array.from({ length: Math.round(engine.si('crew.race-day') ?? 0) + 2 }, () => [''])
