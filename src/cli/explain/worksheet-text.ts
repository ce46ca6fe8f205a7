import { roundingText } from '../../compose/figures-file.ts'
import type { Calculation } from '../../compute/calculation.ts'
import { formulaText } from '../../compute/formula/formula-text.ts'
import type { FigureInput, Worksheet } from '../../model/figure.ts'
import type { Manual } from '../../model/manual.ts'
import { exactNumber } from '../../model/quantity/format-exact.ts'
import { type Locale, styleOf } from '../../model/quantity/format-quantity.ts'
import type { WorksheetWords } from '../../model/worksheet-words.ts'
import { constantsText } from './constants-text.ts'
import { stepsText } from './steps-text.ts'

/** What a worksheet was worked with. */
export type Worked = {
  readonly calculation: Calculation
  readonly locale: Locale
  readonly words: WorksheetWords
  /** How the facility is called. */
  readonly facility: string
  /** A source as it is printed, by its id. */
  readonly source: (id: string) => string
}

function origin({ provenance: p }: FigureInput): string {
  switch (p.kind) {
    case 'measured':
      return `measured ${p.date} by ${p.by} (${p.at.file}:${p.at.line})`
    case 'stated':
      return `stated (${p.at.file}:${p.at.line})`
    case 'rough':
      return `said as about so much, not measured (${p.at.file}:${p.at.line})`
    case 'typical':
      return `typical, not measured here: ${p.note}`
    case 'rule':
      return `rule: ${p.note}`
    case 'choice':
      return p.note === '' ? 'chosen' : `chosen: ${p.note}`
    case 'derived':
      return `from ${p.figure}`
  }
}

/** The number that a formula asks for in a unit of its own, where the value is printed in another. */
function inFormula({ name, kind, si }: FigureInput, { calculation, locale }: Worked): string {
  const unit = calculation.inputs[name]?.formulaUnit
  return unit === undefined || unit === styleOf(kind, locale.system).unit
    ? ''
    : ` (${`${exactNumber(si, unit)} ${unit}`.trim()} in the formula)`
}

/** The name by which an input may be given, its symbol in formulas, its value. */
const inputText = (i: FigureInput, worked: Worked): string =>
  `  ${i.name.padEnd(14)} ${formulaText(i.symbol).padEnd(6)} = ${i.text.padEnd(14)} ${i.label}${inFormula(i, worked)}\n  ${' '.repeat(38)} ${origin(i)}`

function outputText(output: Worksheet['outputs'][number], { formulas }: Worksheet): string[] {
  const { id, label, value, estimate } = output
  const formula = formulas.find((line) => line.figure === id)
  return [
    `  ${id}: ${label}`,
    `    ${formulaText(formula?.tex ?? '')}`,
    ...(formula?.numbers ? [`    ${formulaText(formula.numbers)}`] : []),
    value.ok
      ? `    ${value.text}${estimate ? ' (estimate)' : ''}, rounded ${roundingText(value.rounding)}`
      : `    no number: ${value.reason}`,
    '',
  ]
}

/** A worksheet for the terminal, with the tables of its steps. */
export function worksheetText(sheet: Worksheet, worked: Worked): string {
  return [
    worked.facility,
    `${sheet.number}  ${sheet.title}`.trim(),
    '',
    sheet.about,
    '',
    'What goes in (the first word is the name to give it by)',
    ...sheet.inputs.map((i) => inputText(i, worked)),
    '',
    'What comes out',
    ...sheet.outputs.flatMap((o) => outputText(o, sheet)),
    ...constantsText(sheet, worked.locale.system),
    ...stepsText(sheet, worked.calculation, worked.locale, worked.words),
    'Sources',
    ...sheet.sources.map((id) => `  ${worked.source(id)}`),
  ].join('\n')
}

const lineText = ({ id, number, title, outputs }: Worksheet): string => {
  const figures = outputs.map(
    (o) => `${o.id.slice(id.length + 1)} ${o.value.ok ? o.value.text : 'no number'}`,
  )
  return `${number.padEnd(5)} ${id.padEnd(12)} ${title}: ${figures.join(', ')}`
}

/** All uses of calculations with their figures, one line each. */
export const listText = ({ worksheets, facility }: Manual): string =>
  [facility.name, ...worksheets.map(lineText)].join('\n')

/** The worksheets that work with one calculation. */
export const sharedText = (calculation: string, sheets: readonly Worksheet[]): string =>
  [
    `${sheets.length} worksheets work with "${calculation}"; ask for one of them:`,
    ...sheets.map(lineText),
  ].join('\n')
