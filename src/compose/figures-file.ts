import * as z from 'zod'
import type { Figure, FigureInput, Provenance, Worksheet } from '../model/figure.ts'
import type { Manual } from '../model/manual.ts'
import type { Rounded } from '../model/quantity/format-quantity.ts'

const provenance = z.strictObject({
  kind: z.enum(['measured', 'stated', 'rough', 'typical', 'rule', 'choice', 'derived']),
  /** `facility.yaml:31`, for what the facility says. */
  where: z.string().optional(),
  date: z.string().optional(),
  by: z.string().optional(),
  sources: z.array(z.string()).optional(),
  note: z.string().optional(),
  figure: z.string().optional(),
})

const input = z.strictObject({
  name: z.string(),
  symbol: z.string(),
  label: z.string(),
  kind: z.string(),
  si: z.number(),
  printed: z.string(),
  from: z.string(),
  provenance,
})

const figure = z.strictObject({
  id: z.string(),
  label: z.string(),
  worksheet: z.string(),
  calculation: z.string(),
  kind: z.string(),
  /** Null when no number can be given; `reason` then says why. */
  si: z.number().nullable(),
  printed: z.string(),
  number: z.string(),
  unit: z.string(),
  rounding: z.string(),
  reason: z.string(),
  estimate: z.boolean(),
  toMeasure: z.array(z.string()),
  inputs: z.array(input),
  formula: z.string(),
  numbers: z.string(),
  sources: z.array(z.string()),
})

/**
 * `figures.json`, a public interface: every computed figure with its inputs, their provenance,
 * formula (TeX) and sources. The version goes up when an entry is renamed, removed or changes its
 * meaning; new entries do not raise it.
 */
export const figuresFile = z.strictObject({
  format: z.literal('ovalkeep-figures'),
  version: z.literal(2),
  facility: z.strictObject({
    id: z.string(),
    name: z.string(),
    units: z.enum(['us', 'metric']),
    currency: z.string(),
  }),
  date: z.string(),
  figures: z.array(figure),
  sources: z.record(z.string(), z.string()),
})

export type FiguresFile = z.infer<typeof figuresFile>

function provenanceEntry(p: Provenance): z.infer<typeof provenance> {
  switch (p.kind) {
    case 'measured':
      return { kind: p.kind, where: `${p.at.file}:${p.at.line}`, date: p.date, by: p.by }
    case 'stated':
    case 'rough':
      return { kind: p.kind, where: `${p.at.file}:${p.at.line}` }
    case 'derived':
      return { kind: p.kind, figure: p.figure }
    case 'typical':
    case 'rule':
    case 'choice':
      return { kind: p.kind, sources: [...p.sources], note: p.note }
  }
}

const inputEntry = (i: FigureInput): z.infer<typeof input> => ({
  name: i.name,
  symbol: i.symbol,
  label: i.label,
  kind: i.kind,
  si: i.si,
  printed: i.text,
  from: i.from,
  provenance: provenanceEntry(i.provenance),
})

const roundings = {
  up: 'up to the next',
  down: 'down to the last',
  nearest: 'to the nearest',
} as const

/** How a value was rounded, as the public file and the command line say it. */
export const roundingText = ({ mode, step }: Rounded): string => `${roundings[mode]} ${step}`

/** The entry of one figure of a worksheet. */
export function figureEntry(f: Figure, worksheet: Worksheet): FiguresFile['figures'][number] {
  const formula = worksheet.formulas.find((line) => line.figure === f.id)
  const value = f.value
  return {
    id: f.id,
    label: f.label,
    worksheet: f.worksheet,
    calculation: worksheet.calculation,
    kind: f.kind,
    ...(value.ok
      ? {
          si: value.si,
          printed: value.text,
          number: value.number,
          unit: value.unit,
          rounding: roundingText(value.rounding),
          reason: '',
        }
      : { si: null, printed: '', number: '', unit: '', rounding: '', reason: value.reason }),
    estimate: f.estimate,
    toMeasure: [...f.toMeasure],
    inputs: worksheet.inputs.map(inputEntry),
    formula: formula?.tex ?? '',
    numbers: formula?.numbers ?? '',
    sources: [...worksheet.sources],
  }
}

/** All figures of a manual as the public file has them. */
export function composeFiguresFile(manual: Manual): FiguresFile {
  const { id, name, system, currency } = manual.facility
  return {
    format: 'ovalkeep-figures',
    version: 2,
    facility: { id, name, units: system, currency },
    date: manual.date,
    figures: manual.worksheets.flatMap((worksheet) =>
      worksheet.outputs.map((f) => figureEntry(f, worksheet)),
    ),
    sources: Object.fromEntries(manual.sources.map((s) => [s.id, s.text])),
  }
}
