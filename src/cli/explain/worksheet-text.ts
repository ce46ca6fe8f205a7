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
      return p.note === '' ? 'rule of the trade' : p.note
    case 'derived':
      return `from ${p.figure}`
  }
}

const inputText = (i: FigureInput): string =>
  `  ${formulaText(i.symbol).padEnd(6)} ${i.text.padEnd(14)} ${i.label}\n  ${' '.repeat(21)} ${origin(i)}`

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
export function worksheetText(sheet: Worksheet, { sources }: Manual): string {
  return [
    `${sheet.number}  ${sheet.title}`,
    '',
    sheet.about,
    '',
    'What goes in',
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
export const listText = ({ worksheets }: Manual): string => worksheets.map(lineText).join('\n')
