import { roundingText } from '../../compose/figures-file.ts'
import { formulaText } from '../../compute/formula/formula-text.ts'
import type { FigureInput, Worksheet } from '../../model/figure.ts'
import type { Manual } from '../../model/manual.ts'

function origin({ provenance: p }: FigureInput): string {
  switch (p.kind) {
    case 'measured':
      return `measured ${p.date} by ${p.by} (${p.at.file}:${p.at.line})`
    case 'stated':
      return `stated (${p.at.file}:${p.at.line})`
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

/** The name by which an input may be given, its symbol in formulas, its value. */
const inputText = (i: FigureInput): string =>
  `  ${i.name.padEnd(14)} ${formulaText(i.symbol).padEnd(6)} = ${i.text.padEnd(14)} ${i.label}\n  ${' '.repeat(38)} ${origin(i)}`

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

/** A worksheet for the terminal. */
export function worksheetText(sheet: Worksheet, { sources, facility }: Manual): string {
  return [
    facility.name,
    `${sheet.number}  ${sheet.title}`,
    '',
    sheet.about,
    '',
    'What goes in (the first word is the name to give it by)',
    ...sheet.inputs.map(inputText),
    '',
    'What comes out',
    ...sheet.outputs.flatMap((o) => outputText(o, sheet)),
    'Sources',
    ...sheet.sources.map((id) => `  ${sources.find((s) => s.id === id)?.text ?? id}`),
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
