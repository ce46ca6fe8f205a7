import { nextPlace, type Places } from '../../../edit/readings/places.ts'
import { type ReadingTable, unitOfReading } from '../../../edit/readings/table.ts'
import { fill } from '../../../model/pattern.ts'
import { button, classed, element } from '../../element.ts'
import { newId } from '../controls.ts'
import type { Part } from '../fields/field.ts'
import { problemSaid } from '../problem-at.ts'
import { type Asked, type Cell, cellAt } from './cell.ts'
import { keepPlaces } from './grid-state.ts'
import { headInput } from './head.ts'
import { followKeys } from './keys.ts'
import { spotSaid, tableOf } from './spot.ts'

/** What the whole file has against the readings of a table, by their lines. */
function linesTold({ sitting, file }: Asked): ReadonlyMap<number, string> {
  const problems = sitting.worked()?.problems ?? []
  return new Map(
    problems
      .filter(({ place, code }) => place.file === file && code !== 'schema/missing')
      .map((problem) => [problem.place.line, problemSaid(sitting, problem)]),
  )
}

/** Marks the cells that do not fit, and says why below the grid. */
function refreshFaults(asked: Asked, cells: readonly Cell[], list: HTMLElement): void {
  const { sitting, file } = asked
  const { readings } = sitting.said.form.says
  const table = tableOf(sitting, file)
  const told = linesTold(asked)
  const items = cells.flatMap(({ spot, input, fault }) => {
    const line = table?.readings.find(
      (r) => r.date === spot.date && spotSaid(sitting, r) === spotSaid(sitting, spot),
    )?.line
    const why = fault() ?? (line === undefined ? undefined : told.get(line))
    if (why === undefined) input.removeAttribute('aria-invalid')
    else input.setAttribute('aria-invalid', 'true')
    return why === undefined
      ? []
      : [element('li', fill(readings.atSpot, { spot: spotSaid(sitting, spot), fault: why }))]
  })
  list.replaceChildren(...items)
  list.hidden = items.length === 0
}

/** One row or column more, with the keyboard at its head. */
function adder(asked: Asked, places: Places, of: 'stations' | 'offsets', words: string) {
  const { sitting, file, date } = asked
  return button(words, () => {
    const next = nextPlace(places[of], sitting.locale().system)
    keepPlaces(file, date, { ...places, [of]: [...places[of], next] })
    sitting.reshape()
    const heads = of === 'stations' ? 'tbody tr:last-child th input' : 'thead th:last-child input'
    document.querySelector<HTMLElement>(`.readings ${heads}`)?.focus()
  })
}

type Row = { readonly head: HTMLInputElement; readonly cells: readonly Cell[] }

const headCell = (scope: string, ...inside: (Node | string)[]): HTMLTableCellElement =>
  Object.assign(element('th', ...inside), { scope })

/** What the cells hold, with the unit of a bare number. */
function tableTitle({ sitting, name }: Asked): string {
  const { readings } = sitting.said.form.says
  const { what } = readings
  const unit = unitOfReading(name, sitting.locale().system)
  const said = what[name === 'depth' ? 'depth' : name === 'level' ? 'level' : 'staff']
  return fill(readings.cells, { what: `${said.charAt(0).toUpperCase()}${said.slice(1)}`, unit })
}

function tableNode(
  asked: Asked,
  offsets: readonly HTMLInputElement[],
  rows: readonly Row[],
): HTMLElement {
  const { sitting } = asked
  const { readings } = sitting.said.form.says
  const unit = unitOfReading('place', sitting.locale().system)
  const across = headCell('colgroup', fill(readings.offset, { unit }))
  across.colSpan = Math.max(1, offsets.length)
  const heads = offsets.map((input) => headCell('col', input))
  const station = headCell('col', fill(readings.station, { unit }))
  const lines = rows.map(({ head, cells }) =>
    element('tr', headCell('row', head), ...cells.map(({ node }) => node)),
  )
  return element(
    'table',
    element('caption', tableTitle(asked)),
    element('thead', element('tr', element('td'), across), element('tr', station, ...heads)),
    element('tbody', ...lines),
  )
}

/** Readings of one day as a grid: stations down, places across. */
export function gridOf(asked: Asked, places: Places, table: ReadingTable): Part {
  const { sitting } = asked
  const { readings } = sitting.said.form.says
  const shown = classed('p', 'understood')
  shown.id = newId()
  const misplaced = classed('p', 'fault')
  misplaced.setAttribute('role', 'alert')
  misplaced.hidden = true
  const complain = (words: string): void => {
    misplaced.textContent = words
    misplaced.hidden = words === ''
  }
  const say = (words: string): void => {
    shown.textContent = words
  }
  const offsets = places.offsets.map((_m, index) =>
    headInput(asked, places, { column: 'offset', index }, complain),
  )
  const rows = places.stations.map((station, index) => {
    const head = headInput(asked, places, { column: 'station', index }, complain)
    const cells = places.offsets.map((offset) =>
      cellAt(asked, { date: asked.date, station, offset }, table, say),
    )
    for (const { input } of cells) input.setAttribute('aria-describedby', shown.id)
    return { head, cells }
  })
  const addStation = adder(asked, places, 'stations', readings.addStation)
  const grid = tableNode(asked, offsets, rows)
  followKeys(
    grid,
    rows.map(({ cells }) => cells.map(({ input }) => input)),
    addStation,
  )
  const faults = classed('ul', 'fault reading-faults')
  const scroll = classed('div', 'grid-scroll', grid)
  const adds = classed(
    'div',
    'adds',
    addStation,
    adder(asked, places, 'offsets', readings.addOffset),
  )
  const cells = rows.flatMap((row) => row.cells)
  const refresh = (): void => refreshFaults(asked, cells, faults)
  refresh()
  return { node: element('div', scroll, shown, faults, misplaced, adds), refresh }
}
