import { axisOf, cellsOf } from '../../compose/reckoners/cells.ts'
import type { DayFact, DayReckoner } from '../../model/manual/today.ts'
import type { KindName } from '../../model/quantity/kinds.ts'
import { quantityHtml } from '../../render/text/number-html.ts'
import { classed, element } from '../element.ts'
import type { Day } from './day.ts'
import { newId } from './fields.ts'
import { readField } from './read-field.ts'

/** A table with what it is made of. */
type Table = {
  readonly spec: DayReckoner
  readonly table: HTMLTableElement
  /** The printed cells, row by row. */
  readonly cells: readonly (readonly HTMLElement[])[]
}

const kindOf = (fact: string, { printed, file }: Day): KindName | undefined =>
  printed.facts.get(fact)?.kind ?? file.sums.supposed[fact]

const figuresOf = ({ figure, to, figures, columns }: DayReckoner) =>
  columns ? [{ figure, to }] : (figures ?? [{ figure, to }])

const axisHere = (spec: DayReckoner['rows'], day: Day) => {
  const kind = kindOf(spec.fact, day)
  // The heads stay as they are printed, whatever the day says of a limit.
  return kind && axisOf(spec, kind, day.printed, day.locale)
}

/** The cells of a row by the numbers of the day. */
function rowCells({ spec }: Table, si: number, engine: Day['printed'], day: Day) {
  const columns = spec.columns && axisHere(spec.columns, day)
  return cellsOf([spec.rows.fact, si], columns, figuresOf(spec), engine)
}

/** Shows in a cell what the day says, beside what is printed. */
function markCell(cell: HTMLElement, said: string, is: string, day: Day): void {
  cell.querySelector('.day-now')?.remove()
  cell.classList.toggle('is-was', said !== is)
  if (said === is) return
  const now = classed('span', 'day-now', classed('b', 'day-sign', day.file.words.now), ' ')
  now.insertAdjacentHTML('beforeend', quantityHtml(is))
  cell.append(' ', now)
}

/** What somebody may put in at the head of a row of their own. */
function ownFact({ spec }: Table, day: Day): DayFact | undefined {
  const kind = kindOf(spec.rows.fact, day)
  const known = day.facts.get(spec.rows.fact)
  if (!kind) return undefined
  const values = axisHere(spec.rows, day)?.values ?? []
  const range: [number, number] = [0, 10 * Math.max(...values.map((v) => v.si))]
  return known ?? { path: spec.rows.fact, label: '', kind, step: 0.1, range, said: '' }
}

/** A row of the reader's own: a field at its head, the results beside it. */
function addOwnRow(at: Table, label: string, day: Day): () => void {
  const fact = ownFact(at, day)
  const [first] = at.cells
  if (!fact || !first) return () => undefined
  const input = element('input')
  input.id = newId()
  input.type = 'text'
  input.autocomplete = 'off'
  const name = element('label', day.file.words.mine, classed('span', 'unseen', `: ${label}`))
  name.htmlFor = input.id
  const head = element('th', name, input)
  head.scope = 'row'
  const cells = first.map(() => element('td'))
  const row = classed('tr', 'day-own', head, ...cells)
  at.table.tBodies[0]?.append(row)
  const follow = (): void => {
    const read = readField(input.value, fact, day.locale.system)
    input.setAttribute('aria-invalid', String(input.value.trim() !== '' && !read.ok))
    const texts = read.ok ? rowCells(at, read.si, day.engine(), day) : []
    for (const [i, cell] of cells.entries()) cell.innerHTML = quantityHtml(texts[i] ?? '')
  }
  input.addEventListener('input', follow)
  return follow
}

function tableOf(table: HTMLTableElement): Table {
  const rows = [...(table.tBodies[0]?.rows ?? [])]
  return {
    spec: JSON.parse(table.dataset['reckoner'] ?? '{}') as DayReckoner,
    table,
    cells: rows.map((row) => [...row.querySelectorAll('td')]),
  }
}

/** Follows the ready reckoners of a page, and reads off them at values of the reader's own. */
export function followReckoners(root: ParentNode, day: Day): () => void {
  const tables = [...root.querySelectorAll<HTMLTableElement>('table[data-reckoner]')].map(tableOf)
  const owns = tables.map((at) => {
    const head = at.table.querySelector('thead th')?.textContent ?? ''
    return addOwnRow(at, head, day)
  })
  return () => {
    for (const at of tables) {
      const rows = axisHere(at.spec.rows, day)?.values ?? []
      for (const [i, { si }] of rows.entries()) {
        const [said, is] = [day.printed, day.engine()].map((e) => rowCells(at, si, e, day))
        for (const [j, cell] of (at.cells[i] ?? []).entries())
          markCell(cell, said?.[j] ?? '', is?.[j] ?? '', day)
      }
    }
    for (const own of owns) own()
  }
}
