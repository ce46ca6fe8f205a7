import { figureEntry } from '../compose/figures-file.ts'
import { useIdOf } from '../compute/engine.ts'
import { closest } from '../model/closest.ts'
import type { FigureInput, Worksheet } from '../model/figure.ts'
import type { Manual } from '../model/manual.ts'
import { hasErrors } from '../model/problem.ts'
import { facilityFolder, projectFolders } from './folders.ts'
import { exit, type ExitCode, type Io } from './io.ts'
import { loadManual } from './load/load-manual.ts'
import { problemsText } from './problem-text.ts'
import { texAsText } from './tex-text.ts'

function origin(input: FigureInput): string {
  const p = input.provenance
  switch (p.kind) {
    case 'measured':
      return `measured ${p.date} by ${p.by} (${p.at.file}:${p.at.line})`
    case 'stated':
      return `stated (${p.at.file}:${p.at.line})`
    case 'typical':
      return `typical, not measured here: ${p.note}`
    case 'rule':
      return p.note
    case 'derived':
      return `from ${p.figure}`
  }
}

/** A worksheet for the terminal. */
export function worksheetText(sheet: Worksheet, manual: Manual): string {
  const inputs = sheet.inputs.map((i) => `  ${texAsText(i.symbol).padEnd(6)} ${i.text.padEnd(14)} ${i.label}\n  ${' '.repeat(21)} ${origin(i)}`)
  const results = sheet.outputs.flatMap((o) => {
    const f = sheet.formulas.find((line) => line.figure === o.id)
    const value = o.value.ok ? `${o.value.text}${o.estimate ? ' (estimate)' : ''}, rounded ${o.value.rounding}` : `no number: ${o.value.reason}`
    return [`  ${o.id}: ${o.label}`, `    ${texAsText(f?.tex ?? '')}`, ...(f?.numbers ? [`    ${texAsText(f.numbers)}`] : []), `    ${value}`, '']
  })
  const sources = sheet.sources.flatMap((id) => manual.sources.find((s) => s.id === id)?.text ?? id)
  return [`${sheet.number}  ${sheet.title}`, '', sheet.about, '', 'What goes in', ...inputs, '', 'What comes out', ...results, 'Sources', ...sources.map((s) => `  ${s}`)].join('\n')
}

const listText = (manual: Manual): string =>
  manual.figures.map((f) => `${f.worksheet.padEnd(5)} ${f.id.padEnd(22)} ${(f.value.ok ? f.value.text : 'no number').padEnd(14)} ${f.label}`).join('\n')

/** Prints the worksheet behind a figure, or lists all figures. */
export async function explain(figure: string | undefined, options: { readonly facility?: string; readonly json?: boolean }, io: Io): Promise<ExitCode> {
  const folders = projectFolders()
  const { manual, problems } = await loadManual(facilityFolder(options.facility, io.cwd, folders), folders, io.today)
  if (!manual || hasErrors(problems)) {
    io.err(problemsText(problems, io.colors))
    return exit.faults
  }
  if (figure === undefined) {
    io.out(listText(manual))
    return exit.fine
  }
  const sheet = manual.worksheets.find((w) => w.id === figure || w.number.toLowerCase() === figure.toLowerCase() || (w.id === useIdOf(figure) && w.outputs.some((o) => o.id === figure)))
  if (!sheet) {
    const near = closest(figure, [...manual.figures.map((f) => f.id), ...manual.worksheets.map((w) => w.id)])
    io.err(`There is no figure "${figure}" in this manual.${near ? ` Did you mean "${near}"?` : ''} "explain" alone lists all.`)
    return exit.usage
  }
  const wanted = sheet.outputs.filter((o) => o.id === figure)
  const entries = (wanted.length > 0 ? wanted : sheet.outputs).map((o) => figureEntry(o, sheet))
  io.out(options.json ? JSON.stringify(wanted.length === 1 ? entries[0] : entries, null, 1) : worksheetText(sheet, manual))
  return exit.fine
}
