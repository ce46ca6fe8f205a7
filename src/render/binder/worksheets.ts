import type { FigureInput, Worksheet } from '../../model/figure.ts'
import type { Manual } from '../../model/manual.ts'
import { fill } from '../../model/pattern.ts'
import { formulaHtml } from '../text/formula.ts'
import { type Html, html } from '../text/html.ts'
import { quantityHtml } from '../text/number-html.ts'
import { numbersBehind } from '../text/worked.ts'
import type { Pen } from '../views/pen.ts'
import { type InputView, inputView, roundingWords } from './worksheet-input.ts'
import { worksheetTables } from './worksheet-tables.ts'

/** A value that stands in many worksheets is said in front of them once, from so many on. */
const sharedFrom = 4

type OutputView = {
  readonly label: string
  readonly known: boolean
  readonly value: Html
  readonly reason: string
  /** How it was rounded, where that is not to the nearest. */
  readonly rounding: string
  readonly estimate: boolean
  readonly formula: Html
  readonly numbers: Html
}

/** Worksheets that are worked in the same way, under their titles; mostly one alone. */
type WorksheetBlock = {
  readonly titles: readonly {
    readonly id: string
    readonly number: string
    readonly title: string
  }[]
  readonly about: string
  readonly sources: string
  readonly shared: readonly InputView[]
  readonly inputs: readonly InputView[]
  readonly outputs: readonly OutputView[]
  /** Values and results of several worksheets side by side. */
  readonly tables: ReturnType<typeof worksheetTables>['tables']
  readonly origins: ReturnType<typeof worksheetTables>['origins']
}

/** A worksheet that stands with another one, said in its own place. */
type WorksheetPointer = {
  readonly number: string
  readonly title: string
  readonly standsWith: Html
}

export type WorksheetsView = {
  readonly shared: readonly InputView[]
  readonly entries: readonly (WorksheetBlock | WorksheetPointer)[]
}

/** The same value under the same letter, whatever it is used for. */
const keyOf = (i: FigureInput): string =>
  [i.symbol, i.text, i.label, i.provenance.kind, i.from].join('|')

/** Values that many worksheets use, the one used most of each letter. */
function sharedInputs({ worksheets }: Manual): ReadonlyMap<string, FigureInput> {
  const all = worksheets.flatMap((w) => w.inputs)
  const count = (key: string): number => all.filter((i) => keyOf(i) === key).length
  const shared = new Map<string, FigureInput>()
  for (const i of all) {
    const key = keyOf(i)
    if (shared.has(key) || count(key) < sharedFrom) continue
    const sameLetter = [...shared].find(([, other]) => other.symbol === i.symbol)
    if (sameLetter && count(sameLetter[0]) >= count(key)) continue
    if (sameLetter) shared.delete(sameLetter[0])
    shared.set(key, i)
  }
  return shared
}

function outputViews(w: Worksheet, pen: Pen): readonly OutputView[] {
  return w.outputs.map((o) => {
    const { tex = '', numbers = '' } = w.formulas.find((line) => line.figure === o.id) ?? {}
    const said = `${pen.words.worksheet.numbers}: ${o.label}, ${o.value.ok ? o.value.text : ''}`
    return {
      label: o.label,
      known: o.value.ok,
      value: html(o.value.ok ? quantityHtml(o.value.text) : ''),
      reason: o.value.ok ? '' : o.value.reason,
      rounding: roundingWords(o, pen),
      estimate: o.estimate,
      formula: formulaHtml(tex, `${pen.words.worksheet.formula}: ${o.label}`),
      numbers: numbers === '' ? html('') : formulaHtml(numbersBehind(tex, numbers), said),
    }
  })
}

function blockOf(
  group: readonly Worksheet[],
  shared: ReadonlySet<string>,
  pen: Pen,
): WorksheetBlock {
  const [first] = group
  if (!first) throw new RangeError('a block without a worksheet')
  const isGroup = group.length > 1
  const everywhere = (i: FigureInput): boolean =>
    shared.has(keyOf(i)) && group.every((w) => w.inputs.some((o) => keyOf(o) === keyOf(i)))
  const own = first.inputs.filter((i) => !everywhere(i))
  return {
    titles: group.map(({ id, number, title }) => ({ id, number, title })),
    about: first.about,
    sources: pen.manual.sources
      .filter((s) => first.sources.includes(s.id))
      .map((s) => s.short)
      .join('; '),
    shared: first.inputs.filter(everywhere).map((i) => inputView(i, pen)),
    inputs: isGroup ? [] : own.map((i) => inputView(i, pen)),
    outputs: isGroup ? [] : outputViews(first, pen),
    ...(isGroup
      ? worksheetTables(
          group,
          own.map((i) => i.name),
          pen,
        )
      : { tables: [], origins: [] }),
  }
}

/**
 * All worksheets in the order of their numbers. Those of one calculation, which say the same of it,
 * stand with the first of them: the formulas once, the numbers side by side.
 */
export function worksheetsView(pen: Pen): WorksheetsView {
  const { manual, words } = pen
  const shared = sharedInputs(manual)
  const keys = new Set(shared.keys())
  const groupOf = (w: Worksheet): readonly Worksheet[] =>
    manual.worksheets.filter((o) => o.calculation === w.calculation && o.about === w.about)
  const entries = manual.worksheets.flatMap((w, i): WorksheetsView['entries'] => {
    const group = groupOf(w)
    const [first] = group
    if (first === w) return [blockOf(group, keys, pen)]
    // What follows at once has its title there already.
    const before = manual.worksheets[i - 1]
    if (!first || (before && group.includes(before))) return []
    return [
      {
        number: w.number,
        title: w.title,
        standsWith: html(fill(words.worksheet.standsWith, { number: first.number })),
      },
    ]
  })
  return { shared: [...shared.values()].map((i) => inputView(i, pen)), entries }
}
