import type { Worksheet } from '../../model/figure.ts'
import { formulaHtml } from '../text/formula.ts'
import { type Html, html } from '../text/html.ts'
import { quantityHtml } from '../text/number-html.ts'
import { plainNumber, resultOf } from '../text/worked.ts'
import type { Pen } from '../views/pen.ts'
import { inputView, roundingWords } from './worksheet-input.ts'

/** Worksheets side by side in one table: more would be narrower than their numbers. */
const mostColumns = 4

type Cell = {
  readonly value: Html
  /** A result before it was rounded, where it reads otherwise. */
  readonly exact: Html
  /** Letter of where it comes from. */
  readonly from: string
  readonly marked: boolean
}

type Row = {
  /** Of a value that is put in. */
  readonly symbol: Html
  /** Of a result. */
  readonly formula: Html
  readonly rounding: string
  readonly label: string
  readonly isResult: boolean
  readonly cells: readonly Cell[]
}

type WorksheetTable = { readonly numbers: readonly string[]; readonly rows: readonly Row[] }

/** Where values come from: a letter, the words, and the worksheet that they lead to. */
type Origin = { readonly letter: string; readonly text: string; readonly href: string }

/** 0 → `a`, 25 → `z`, 26 → `aa`. */
const letterOf = (n: number): string =>
  String.fromCharCode(97 + (n % 26)).repeat(1 + Math.floor(n / 26))

/** Gives every origin its letter, in the order in which they are met. */
function originLetters(): {
  readonly all: Origin[]
  readonly letter: (text: string, href?: string) => string
} {
  const all: Origin[] = []
  return {
    all,
    letter: (text, href = '') => {
      const known = all.find((o) => o.text === text)
      if (known) return known.letter
      const letter = letterOf(all.length)
      all.push({ letter, text, href })
      return letter
    },
  }
}

type Letters = ReturnType<typeof originLetters>

function resultCell(w: Worksheet, at: number, letters: Letters, pen: Pen): Cell {
  const o = w.outputs[at]
  if (!o?.value.ok) {
    const why = o?.value.ok === false ? o.value.reason : ''
    const from = letters.letter(`${pen.words.worksheet.noNumber}: ${why}`)
    return { value: html('–'), exact: html(''), from, marked: false }
  }
  const { text } = o.value
  const tex = resultOf(w.formulas.find((f) => f.figure === o.id)?.numbers ?? '')
  const isSame = plainNumber(tex) === text.replaceAll(/\s/g, '')
  return {
    value: html(quantityHtml(text)),
    exact: html(isSame || tex === '' ? '' : `${formulaHtml(tex, `${o.label}, ${text}`)}`),
    from: '',
    marked: o.estimate,
  }
}

/** A table of these worksheets, of which the first says what the rows are. */
function tableOf(
  group: readonly Worksheet[],
  inputs: readonly string[],
  letters: Letters,
  pen: Pen,
): WorksheetTable {
  const [first] = group
  const inputRows = inputs.map((name): Row => {
    const cells = group.map((w): Cell => {
      const i = w.inputs.find((other) => other.name === name)
      if (!i) return { value: html('–'), exact: html(''), from: '', marked: false }
      const { value, origin, href, typical } = inputView(i, pen)
      return { value, exact: html(''), from: letters.letter(origin, href), marked: typical }
    })
    const { symbol = '', label = '' } = first?.inputs.find((i) => i.name === name) ?? {}
    const none = { formula: html(''), rounding: '' }
    return { symbol: formulaHtml(symbol, label), ...none, label, isResult: false, cells }
  })
  const results = (first?.outputs ?? []).map((o, at): Row => {
    const cells = group.map((w) => resultCell(w, at, letters, pen))
    const label = group.length > 1 ? o.many : o.label
    const rounding = roundingWords(o, pen)
    const tex = first?.formulas.find((f) => f.figure === o.id)?.tex ?? ''
    const formula = formulaHtml(tex, `${pen.words.worksheet.formula}: ${label}`)
    return { symbol: html(''), formula, rounding, label, isResult: true, cells }
  })
  return { numbers: group.map((w) => w.number), rows: [...inputRows, ...results] }
}

/**
 * Tables of worksheets that share their formulas: a column for each, the values that were put in and
 * then the results.
 * @param inputs Names of the inputs that are shown.
 */
export function worksheetTables(
  group: readonly Worksheet[],
  inputs: readonly string[],
  pen: Pen,
): { readonly tables: readonly WorksheetTable[]; readonly origins: readonly Origin[] } {
  const letters = originLetters()
  const count = Math.ceil(group.length / mostColumns)
  const size = Math.ceil(group.length / count)
  const tables = Array.from({ length: count }, (_, i) =>
    tableOf(group.slice(i * size, (i + 1) * size), inputs, letters, pen),
  )
  return { tables, origins: letters.all }
}
