import { escapeHtml } from '../../render/text/escape-html.ts'
import { quantityHtml } from '../../render/text/number-html.ts'
import { classed } from '../element.ts'
import type { Day } from './day.ts'
import { fieldFor } from './fields.ts'
import { fillPlaces } from './fill-places.ts'

/** The templates of a line: the formula, and symbols by their names. */
function templatesIn(output: HTMLElement) {
  const [places, ...symbols] = output.querySelectorAll('template')
  return {
    places: places?.innerHTML ?? '',
    symbols: Object.fromEntries(
      symbols.map((t) => [
        t.dataset['symbol'] ?? '',
        t.content.querySelector('math')?.innerHTML ?? '',
      ]),
    ),
  }
}

/** An input of the worksheet: the field where it is of the day, the number of the day where it follows. */
function followInput(cell: HTMLElement, use: string, day: Day): () => void {
  const { input = '', fact } = cell.dataset
  const own = fact === undefined ? undefined : day.facts.get(fact)
  if (own) {
    cell.append(fieldFor(own, day, true))
    return () => undefined
  }
  const now = classed('span', 'day-now')
  return () => {
    const textOf = (engine: Day['printed']): string | undefined =>
      engine.worksheet(use)?.inputs.find((i) => i.name === input)?.text
    const [said, is] = [textOf(day.printed), textOf(day.engine())]
    const isChanged = is !== undefined && is !== said
    cell.classList.toggle('is-was', isChanged)
    if (!isChanged) return now.remove()
    now.replaceChildren(classed('b', 'day-sign', day.file.words.now), ' ')
    now.insertAdjacentHTML('beforeend', quantityHtml(is))
    cell.append(' ', now)
  }
}

/** The line with the numbers of the day, below that of the manual. */
function followLine(output: HTMLElement, use: string, day: Day): () => void {
  const name = output.dataset['output'] ?? ''
  const { places, symbols } = templatesIn(output)
  const numbers = output.querySelector<HTMLElement>('.numbers')
  const line = classed('p', 'math day-line')
  line.tabIndex = 0
  line.setAttribute('role', 'group')
  line.setAttribute('aria-label', numbers?.getAttribute('aria-label') ?? day.file.words.now)
  const lineOf = (engine: Day['printed']) =>
    engine.worksheet(use)?.formulas.find((f) => f.figure === name)
  return () => {
    const [said, is] = [lineOf(day.printed), lineOf(day.engine())]
    const isChanged = is !== undefined && is.numbers !== '' && is.numbers !== said?.numbers
    const isLost = is?.numbers === '' && said?.numbers !== ''
    const wrong = day.waitsFor(name).length > 0
    numbers?.classList.toggle('is-was', isChanged || isLost || wrong)
    if (!isChanged || wrong) return line.remove()
    line.innerHTML = `<b class="day-sign">${escapeHtml(day.file.words.now)}</b> <span class="formula">${fillPlaces(places, is.put, symbols)}</span>`
    output.append(line)
  }
}

/** Follows the working of one worksheet. */
function followSheet(sheet: HTMLElement, day: Day): () => void {
  const use = sheet.dataset['use'] ?? ''
  const all = (what: string): HTMLElement[] => [...sheet.querySelectorAll<HTMLElement>(what)]
  const follow = [
    ...all('[data-input]').map((cell) => followInput(cell, use, day)),
    ...all('[data-output]').map((output) => followLine(output, use, day)),
  ]
  return () => {
    for (const each of follow) each()
  }
}

/** Follows the working of worksheets: inputs and formulas. */
export function followWorksheets(root: ParentNode, day: Day): () => void {
  const sheets = [...root.querySelectorAll<HTMLElement>('.worksheet[data-use]')].map((sheet) =>
    followSheet(sheet, day),
  )
  return () => {
    for (const each of sheets) each()
  }
}
