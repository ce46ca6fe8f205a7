import { dateWithYear } from '../../../compose/dates.ts'
import { textAt } from '../../../edit/form/data.ts'
import { withDay } from '../../../edit/readings/change.ts'
import { waiting } from '../../../edit/readings/fitting.ts'
import { type Places, placesFor, readyPlaces } from '../../../edit/readings/places.ts'
import type { ReadingName, ReadingTable } from '../../../edit/readings/table.ts'
import { dayAt, isDay } from '../../../model/day.ts'
import { fill } from '../../../model/pattern.ts'
import { surveyFiles } from '../../../model/survey.ts'
import type { Path } from '../../../read/read-yaml.ts'
import { button, classed, element } from '../../element.ts'
import { newId, selectControl } from '../controls.ts'
import type { Part } from '../fields/field.ts'
import type { Sitting } from '../sitting.ts'
import { drawnReadings } from './drawn.ts'
import { gridOf } from './grid.ts'
import { keepPlaces, knownPlaces, showDay, shownDay } from './grid-state.ts'
import { tableOf } from './spot.ts'
import { waitingSaid } from './waiting-tables.ts'

const typed: readonly string[] = Object.values(surveyFiles)

/** The day where the page is read. */
export const todayHere = (): string => dayAt(Date.now() - new Date().getTimezoneOffset() * 60_000)

/** Places that stand ready, by the oval as it is described. */
function readyFor(sitting: Sitting, name: ReadingName): Places | undefined {
  const engine = sitting.worked()?.computed?.engine
  const found = engine?.siOfAll({
    rail: 'rail.length',
    width: 'oval.width.straights',
    stations: 'practice.survey.stations',
    lines: 'practice.survey.lines',
  })
  return found && readyPlaces(name, found, sitting.locale().system)
}

/** The days of a table, the latest first. */
const daysOf = ({ readings }: ReadingTable): readonly string[] =>
  [...new Set(readings.map(({ date }) => date))].sort().reverse()

type Shown = {
  readonly sitting: Sitting
  readonly file: string
  readonly table: ReadingTable
  readonly date: string
}

/** Which day is shown, and on which day its readings were taken. */
function dayLine({ sitting, file, table, date }: Shown): HTMLElement {
  const { readings } = sitting.said.form.says
  const days = daysOf(table)
  const given = { locale: sitting.locale(), library: sitting.said.library }
  const input = element('input')
  input.type = 'date'
  input.id = newId()
  input.value = date
  input.addEventListener('change', () => {
    if (!isDay(input.value)) return
    const places = knownPlaces(file, date)
    if (places) keepPlaces(file, input.value, places)
    showDay(file, input.value)
    sitting.putTable({ name: file, text: withDay(table, date, input.value) }, [], '')
    setTimeout(sitting.reshape)
  })
  const label = element('label', readings.day)
  label.htmlFor = input.id
  const node = classed('div', 'fields', classed('div', 'field', label, input))
  if (days.length < 2) return node
  const choose = selectControl(
    days.map((day) => ({ value: day, said: dateWithYear(day, given) })),
    readings.days,
  )
  choose.show(date)
  const [select] = choose.inputs
  const caption = element('label', readings.days)
  caption.htmlFor = select?.id ?? ''
  select?.addEventListener('change', () => {
    if (choose.read() === '') return
    showDay(file, choose.read())
    setTimeout(sitting.reshape)
  })
  node.prepend(classed('div', 'field', caption, choose.node))
  return node
}

/** Another day, whose places are those of the latest one. */
function anotherDay({ sitting, file, table }: Shown): HTMLElement {
  const day = todayHere()
  const another = button(sitting.said.form.says.readings.another, () => {
    showDay(file, day)
    sitting.reshape()
    document.querySelector<HTMLElement>('.readings [type="date"]')?.focus()
  })
  another.disabled = table.readings.length === 0 || daysOf(table).includes(day)
  return another
}

/** What waits for more readings, and how many there are. */
function counted({ sitting, file, date }: Shown, isDrawn: boolean): string {
  const { readings } = sitting.said.form.says
  const day = (tableOf(sitting, file)?.readings ?? []).filter((r) => r.date === date)
  if (day.length === 0) return ''
  const count = fill(readings.count, { count: day.length, file })
  const isFew = waiting(day).length === day.length && !isDrawn
  return `${count} ${isFew ? readings.few : waitingSaid(sitting, day)}`.trim()
}

function whole(shown: Shown): Part {
  const { sitting, file, table, date } = shown
  const { readings } = sitting.said.form.says
  const known = knownPlaces(file, date)
  const places = placesFor(table, date, { known, ready: readyFor(sitting, table.name) })
  // They stay where they are while readings come and go; before the oval is known there are none.
  if (places.stations.length > 0) keepPlaces(file, date, places)
  const grid = gridOf({ sitting, file, name: table.name, date }, places, table)
  const drawn = drawnReadings(sitting, table.name)
  const count = classed('p', 'until')
  const refresh = (): void => {
    grid.refresh()
    drawn.refresh()
    count.textContent = counted(shown, drawn.isDrawn())
    count.hidden = count.textContent === ''
  }
  refresh()
  const node = classed(
    'section',
    'readings',
    element('h3', readings.title),
    classed('p', 'how', readings.lead),
    dayLine(shown),
    grid.node,
    count,
    drawn.node,
    anotherDay(shown),
  )
  return { node, refresh }
}

const note = (words: string): Part => ({
  node: classed('p', 'until', words),
  refresh: () => undefined,
})

/** The readings of an entry of `surveys`; nothing where it names no table yet. */
export function readingsPart(sitting: Sitting, at: Path): Part | undefined {
  const file = textAt(sitting.draft().data, [...at, 'file'])
  if (file === undefined) return undefined
  const { readings } = sitting.said.form.says
  if (!typed.includes(file)) return note(fill(readings.otherFile, { file }))
  if (sitting.draft().tables.get(file) === undefined) return undefined
  const table = tableOf(sitting, file)
  if (!table) return note(readings.cannot)
  const date = shownDay(file) ?? daysOf(table)[0] ?? todayHere()
  showDay(file, date)
  return whole({ sitting, file, table, date })
}
