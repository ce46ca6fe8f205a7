import { raceDayValues } from '../../compute/facts/race-day-values.ts'
import { factPathOf, quantityIdOf } from '../../compute/uses/ids.ts'
import { useIdOf } from '../../compute/uses/use.ts'
import { type FactPath, factSpec, kindOfFact } from '../../model/fact-spec.ts'
import type {
  DayClock,
  DayFact,
  DayFactGroup,
  DayList,
  DayProgram,
  ManualToday,
  Waits,
} from '../../model/manual/today.ts'
import { namesIn } from '../../model/placeholders.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import { parseQuantity } from '../../model/quantity/parse-quantity.ts'
import type { TodayFile } from '../../validate/schemas/today.ts'
import type { When } from '../../validate/schemas/when.ts'
import { applies } from '../applies.ts'
import { type ComposeContext, itemsOf } from '../context.ts'
import { shortDate } from '../dates.ts'
import { composeSums } from './sums.ts'
import { usesOfFacts, usesOfReadings } from './uses-behind.ts'

const siOf = (written: string): number => {
  const read = parseQuantity(written, { plain: true })
  return read.ok ? read.quantity.si : Number.NaN
}

function dayFact(
  { fact, label, step }: TodayFile['groups'][number]['facts'][number],
  { engine, locale }: ComposeContext,
): DayFact | undefined {
  const path = factPathOf(fact)
  const spec = factSpec(path)
  const rests = engine.figuresOn(path).length > 0
  if (!spec || !rests) return undefined
  const known = engine.facts.get(path)
  const [low, high] = spec.range
  return {
    path,
    label,
    kind: spec.kind,
    step: typeof step === 'number' ? step : step[locale.system],
    range: [siOf(low), siOf(high)],
    said: known ? formatExact(known.si, known.kind, locale, 'prose') : '',
  }
}

/** The names of what may change when a fact of the day does. */
function followers(
  { uses, figureIds }: ComposeContext['engine'],
  paths: readonly FactPath[],
): readonly string[] {
  const follow = usesOfFacts(uses, new Set(paths))
  const without = usesOfReadings(uses)
  return [
    ...paths,
    ...figureIds.filter((id) => follow.has(useIdOf(id)) && !without.has(useIdOf(id))),
  ]
}

const listed = (names: string | readonly string[] | undefined): readonly string[] =>
  names === undefined ? [] : typeof names === 'string' ? [names] : names

type Belongs = {
  readonly needs?: readonly string[] | undefined
  readonly lacks?: readonly string[] | undefined
  readonly when?: When | undefined
}

const waits = ({ needs, lacks, when }: Belongs): Waits => ({
  needs: needs ?? [],
  lacks: lacks ?? [],
  above: listed(when?.['above-zero']),
  zero: listed(when?.zero),
})

/** Whether it may belong here, on some day: what numbers decide is decided on the day. */
const mayApply = (when: When | undefined, { here }: ComposeContext): boolean =>
  applies(when && { ...when, 'above-zero': undefined, zero: undefined }, here)

const exists = (name: string, { engine }: ComposeContext): boolean => {
  const id = quantityIdOf(name)
  return engine.facts.has(id as never) || engine.figure(id as never) !== undefined
}

const clocks = (file: TodayFile, context: ComposeContext): readonly DayClock[] =>
  file.clocks
    .map(({ rows, now, ...clock }) => ({
      ...clock,
      now: now === true,
      rows: rows
        .filter((row) => mayApply(row.when, context))
        .filter((row) => [row.figure, ...(row.needs ?? [])].every((n) => exists(n, context)))
        .map((row) => ({
          figure: row.figure,
          before: row.before === true,
          says: row.says,
          ...waits(row),
          // A time is counted by a number that there is.
          needs: [row.figure, ...(row.needs ?? [])],
        })),
    }))
    .filter(({ rows }) => rows.length > 0)

/** The rows of a plan's table that begin with a time, to be decided on the day. */
function list(file: TodayFile, context: ComposeContext): DayList | undefined {
  const { plan, table, title } = file.list
  const found = itemsOf(context.library.schedules)
    .find((s) => s.id === plan)
    ?.tables.find((t) => t.id === table)
  if (!context.parts.schedules.some((s) => s.id === plan)) return undefined
  const rows = (found?.rows ?? []).flatMap((row) => {
    const [when = '', says = '', who = ''] = row.cells
    const [at] = namesIn(when)
    if (at === undefined || !mayApply(row.when, context)) return []
    return [{ at, when, says, who, ...waits(row), needs: [...new Set([at, ...(row.needs ?? [])])] }]
  })
  return rows.length > 0 ? { plan, title, rows } : undefined
}

/** What the program of each race day says of the facts of the day. */
const programs = (paths: readonly FactPath[], context: ComposeContext): readonly DayProgram[] => {
  const { file } = context.facility
  return (file['race-days'] ?? []).map((day) => ({
    date: day.date,
    called: shortDate(day.date, context),
    says: Object.fromEntries(
      [...raceDayValues(day, file.place['time-zone'])].flatMap(([path, si]) => {
        const kind = paths.includes(path) ? kindOfFact(path) : undefined
        return kind ? [[path, formatExact(si, kind, context.locale)]] : []
      }),
    ),
  }))
}

/** What a phone can work out anew for a day. */
export function composeToday(context: ComposeContext): ManualToday {
  const [file] = itemsOf(context.library.today)
  if (!file) throw new RangeError('the library has no numbers of the day')
  const groups: readonly DayFactGroup[] = file.groups
    .map(({ id, title, facts }) => ({
      id,
      title,
      facts: facts.flatMap((f) => dayFact(f, context) ?? []),
    }))
    .filter(({ facts }) => facts.length > 0)
  const paths = groups.flatMap(({ facts }) => facts.map(({ path }) => factPathOf(path)))
  const reckoners = itemsOf(context.library.reckoners).filter(({ id }) =>
    context.parts.reckoners.some((r) => r.id === id),
  )
  const axes = reckoners.flatMap(({ rows, columns }) => (columns ? [rows, columns] : [rows]))
  return {
    groups,
    results: file.results
      .map(({ title, figures }) => ({
        title,
        figures: figures.filter((name) => exists(name, context)),
      }))
      .filter(({ figures }) => figures.length > 0),
    clocks: clocks(file, context),
    list: list(file, context),
    programs: programs(paths, context),
    reckoners: reckoners.map(({ id, figure, to, rows, columns, figures }) => ({
      id,
      figure,
      to,
      rows,
      columns,
      figures: figures?.map((f) => ({ figure: f.figure, to: f.to })),
    })),
    follows: followers(context.engine, paths),
    sums: composeSums([...paths, ...axes.map((axis) => factPathOf(axis.fact))], context),
  }
}
