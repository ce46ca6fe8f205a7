import { written } from '../edit/written.ts'
import type { Finding, ToMeasure } from '../model/manual/finding.ts'
import type { Manual } from '../model/manual.ts'
import { placeholder } from '../model/placeholders.ts'

/** Text for a terminal: quantities put in, Markdown marks taken out. */
function plainText(text: string, manual: Manual): string {
  return text
    .replace(placeholder, (_, name: string) => manual.quantities[name]?.text ?? name)
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/[*_`]/g, '')
}

/** The entry of a measurement, as it is typed. */
const lineToPaste = ({ of, text }: ToMeasure, { date }: Manual): string =>
  written({ of, value: text.replaceAll('−', '-'), date, by: 'your name' })

/** Where the answer to a finding is written, as keys of the file. */
const entryOf = ({ ask: { entry, role } }: Finding): string =>
  `${entry.replaceAll('.', ', ')}${role === undefined ? '' : `, with role: ${role}`}`

/** Usual values with what they are of. */
const guessed = ({ guesses }: Finding): string =>
  guesses.map(({ label, text }) => `${label} ${text}`).join('; ')

/** The findings of a facility, worst first, and what rests on values that nobody has measured. */
export function findingsText(manual: Manual): string {
  const lines = manual.findings.flatMap((f) => [
    `${f.severity.toUpperCase().padEnd(8)} ${plainText(f.title, manual)}`,
    `         ${plainText(f.text, manual)}`,
    `         To do: ${plainText(f.do, manual)}`,
    ...(f.guesses.length === 0
      ? []
      : [`         Nobody has said, so usual values stand in: ${guessed(f)}`]),
    ...(f.ask.isSaid ? [] : [`         In facility.yaml: ${entryOf(f)}`]),
    ...(f.where.length > 0 ? [`         See ${f.where.join(', ')}`] : []),
    '',
  ])
  const estimates = manual.figures.filter((f) => f.estimate).length
  const unknown = manual.figures.filter((f) => !f.value.ok)
  return [
    `${manual.facility.name}: ${manual.procedures.length} procedures, ${manual.figures.length} figures, ${estimates} of them estimates`,
    '',
    ...lines,
    ...(manual.toMeasure.length > 0
      ? [
          'Not measured, the most telling first (figures that move when it is a tenth off).',
          'When you have measured one, put its line, with what you found, into facility.yaml below',
          '"measurements:"; where there is no such entry yet, add it at the end of the file.',
          ...manual.toMeasure.flatMap((m) => [
            `  ${String(m.figures).padStart(3)}  ${m.label}: ${m.text}; most, by ${m.percent} %: ${m.most}`,
            `         - ${lineToPaste(m, manual)}`,
          ]),
          '',
        ]
      : []),
    ...(unknown.length > 0
      ? [
          'Figures without a number:',
          ...unknown.map((f) => `  ${f.id.padEnd(22)} ${f.value.ok ? '' : f.value.reason}`),
          '',
        ]
      : []),
    `${manual.findings.length} findings`,
  ].join('\n')
}
