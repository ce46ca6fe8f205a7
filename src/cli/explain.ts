import { figureEntry, roundingText } from '../compose/figures-file.ts'
import type { Computed } from '../compute/compute-facility.ts'
import { createEngine } from '../compute/engine/engine.ts'
import { formulaText } from '../compute/formula/formula-text.ts'
import { type Binding, fixed, type Use, useIdOf } from '../compute/uses/use.ts'
import { didYouMean } from '../model/closest.ts'
import type { FigureInput, Worksheet } from '../model/figure.ts'
import type { Manual } from '../model/manual.ts'
import { hasErrors } from '../model/problem.ts'
import { kindOf } from '../model/quantity/kinds.ts'
import { parseQuantity } from '../model/quantity/parse-quantity.ts'
import { dimensionless, sameDims } from '../model/quantity/units.ts'
import { facilityFolder, projectFolders } from './folders.ts'
import { type ExitCode, exit, type Io } from './io.ts'
import { loadManual } from './load/load-manual.ts'
import { problemsText } from './problem-text.ts'

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
      return p.note === '' ? 'rule of the trade' : p.note
    case 'derived':
      return `from ${p.figure}`
  }
}

/** A worksheet for the terminal. */
export function worksheetText(sheet: Worksheet, manual: Manual): string {
  const inputs = sheet.inputs.map(
    (i) =>
      `  ${formulaText(i.symbol).padEnd(6)} ${i.text.padEnd(14)} ${i.label}\n  ${' '.repeat(21)} ${origin(i)}`,
  )
  const results = sheet.outputs.flatMap((o) => {
    const f = sheet.formulas.find((line) => line.figure === o.id)
    const value = o.value.ok
      ? `${o.value.text}${o.estimate ? ' (estimate)' : ''}, rounded ${roundingText(o.value.rounding)}`
      : `no number: ${o.value.reason}`
    return [
      `  ${o.id}: ${o.label}`,
      `    ${formulaText(f?.tex ?? '')}`,
      ...(f?.numbers ? [`    ${formulaText(f.numbers)}`] : []),
      `    ${value}`,
      '',
    ]
  })
  const sources = sheet.sources.flatMap((id) => manual.sources.find((s) => s.id === id)?.text ?? id)
  return [
    `${sheet.number}  ${sheet.title}`,
    '',
    sheet.about,
    '',
    'What goes in',
    ...inputs,
    '',
    'What comes out',
    ...results,
    'Sources',
    ...sources.map((s) => `  ${s}`),
  ].join('\n')
}

/** All uses of calculations with their figures, one line each. */
function listText(manual: Manual): string {
  return manual.worksheets
    .map((w) => {
      const figures = w.outputs
        .map((o) => `${o.id.slice(w.id.length + 1)} ${o.value.ok ? o.value.text : 'no number'}`)
        .join(', ')
      return `${w.number.padEnd(5)} ${w.id.padEnd(12)} ${w.title}: ${figures}`
    })
    .join('\n')
}

const findSheet = (manual: Manual, wanted: string): Worksheet | undefined =>
  manual.worksheets.find(
    (w) =>
      w.id === wanted ||
      w.calculation === wanted ||
      w.number.toLowerCase() === wanted.toLowerCase() ||
      (w.id === useIdOf(wanted) && w.outputs.some((o) => o.id === wanted)),
  )

/** Inputs written as `width="9 ft"`, by the names of the worksheet's inputs. */
function readInputs(
  texts: readonly string[],
  sheet: Worksheet,
): { values: ReadonlyMap<string, number>; faults: string[] } {
  const values = new Map<string, number>()
  const faults: string[] = []
  for (const text of texts) {
    const [name = '', ...rest] = text.split('=')
    const input = sheet.inputs.find((i) => i.name === name)
    if (!input) {
      const known = sheet.inputs.map((i) => i.name)
      faults.push(
        `${text}: ${sheet.id} has no input "${name}"; ${didYouMean(name, known) ?? `it has: ${known.join(', ')}`}`,
      )
      continue
    }
    const kind = kindOf(input.kind)
    const parsed = parseQuantity(rest.join('='), { plain: sameDims(kind.dims, dimensionless) })
    if (!parsed.ok)
      faults.push(
        `${text}: ${parsed.fault.message}; expected ${kind.means} such as "${kind.example}"`,
      )
    else if (!sameDims(parsed.quantity.dims, kind.dims))
      faults.push(`${text}: not ${kind.means}; expected such as "${kind.example}"`)
    else values.set(name, parsed.quantity.si)
  }
  return { values, faults }
}

/** Works a use again with some of its inputs given; the rest stay as the facility has them. */
function workAgain(
  loaded: { readonly computed: Computed },
  sheet: Worksheet,
  values: ReadonlyMap<string, number>,
): Worksheet {
  const { engine, locale, words } = loaded.computed
  const given = (name: string): Binding | undefined => {
    const si = values.get(name)
    return si === undefined ? undefined : fixed(si, 'given')
  }
  const uses = engine.uses.map(
    (u): Use =>
      u.id === sheet.id
        ? {
            ...u,
            bindings: Object.fromEntries(
              Object.entries(u.bindings).map(([name, b]) => [name, given(name) ?? b]),
            ),
          }
        : u,
  )
  return (
    createEngine<string, string, string>(uses, engine.facts, locale, words).worksheet(sheet.id) ??
    sheet
  )
}

/** Prints the worksheet behind a figure, also with other inputs; alone, lists all calculations. */
export async function explain(
  figure: string | undefined,
  inputs: readonly string[],
  options: { readonly facility?: string; readonly json?: boolean },
  io: Io,
): Promise<ExitCode> {
  const folders = projectFolders()
  const { manual, computed, problems } = await loadManual(
    facilityFolder(options.facility, io.cwd, folders),
    folders,
    io.today,
  )
  if (!manual || !computed || hasErrors(problems)) {
    io.err(problemsText(problems, io.colors))
    return exit.faults
  }
  if (figure === undefined) {
    io.out(listText(manual))
    return exit.fine
  }
  const found = findSheet(manual, figure)
  if (!found) {
    const known = [...manual.figures.map((f) => f.id), ...manual.worksheets.map((w) => w.id)]
    io.err(
      `there is no figure "${figure}" in this manual; ${didYouMean(figure, known) ?? '"explain" alone lists all'}`,
    )
    return exit.usage
  }
  const { values, faults } = readInputs(inputs, found)
  if (faults.length > 0) {
    io.err(faults.join('\n'))
    return exit.usage
  }
  const sheet = values.size === 0 ? found : workAgain({ computed }, found, values)
  const wanted = sheet.outputs.filter((o) => o.id === figure)
  const entries = (wanted.length > 0 ? wanted : sheet.outputs).map((o) => figureEntry(o, sheet))
  io.out(
    options.json
      ? JSON.stringify(wanted.length === 1 ? entries[0] : entries, null, 1)
      : worksheetText(sheet, manual),
  )
  return exit.fine
}
