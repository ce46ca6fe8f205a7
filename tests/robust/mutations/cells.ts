import type { Chance } from '../chance.ts'
import { hostileTexts, oddDays, oddNumbers } from './hostile.ts'
import { type Mutations, ofText } from './mutation.ts'

type Rows = readonly (readonly string[])[]

const cells = (change: (rows: Rows, chance: Chance) => Rows) =>
  ofText((text, chance) =>
    change(
      text.split('\n').map((line) => line.split(',')),
      chance,
    )
      .map((row) => row.join(','))
      .join('\n'),
  )

/** A change of one cell; those of the head among them. */
const cell = (other: (text: string, column: readonly string[], chance: Chance) => string) =>
  cells((rows, chance) => {
    const r = chance.below(rows.length)
    const row = rows[r] ?? []
    const c = chance.below(row.length)
    const column = rows.map((of) => of[c] ?? '')
    return rows.with(r, row.with(c, other(row[c] ?? '', column, chance)))
  })

const inQuotes = (text: string): string => `"${text.replaceAll('"', '""')}"`

const heads = [
  'date',
  'station (ft)',
  'station (m)',
  'offset',
  'depth (in)',
  'depth (mm)',
  'depth',
  'level (m)',
  'rain (in)',
  'by',
  'loads (gal)',
  'zq',
  '',
  '__proto__',
  'constructor',
  '<zq-head>',
]

const factors = [0, -1, 0.5, 0.9, 1.1, 2, 10, 1000, 1e9]

/** Changes of what the cells of a table say. */
export const meaningsOfCells: Mutations = [
  cell((text, _, chance) =>
    Number.isFinite(Number(text)) ? String(Number(text) * chance.oneOf(factors)) : text,
  ),
  cell((text, _, chance) =>
    Number.isFinite(Number(text))
      ? String(Number((Number(text) * (0.5 + chance.below(1000) / 1000)).toPrecision(5)))
      : text,
  ),
  cell((_, __, chance) => chance.oneOf(oddNumbers)),
  cell((_, __, chance) => chance.oneOf(oddDays)),
  cell(() => ''),
  cell((_, column, chance) => chance.oneOf(column)),
  cell((_, __, chance) => inQuotes(chance.oneOf(hostileTexts))),
  cell((text, __, chance) => inQuotes(`${text}${chance.oneOf(hostileTexts)}`)),
  // Another head.
  cells((rows, chance) => {
    const head = rows[0] ?? ['']
    return rows.with(0, head.with(chance.below(head.length), chance.oneOf(heads)))
  }),
  // A column is gone, stands twice, or elsewhere.
  cells((rows, chance) => {
    const c = chance.below(rows[0]?.length ?? 1)
    return rows.map((row) => row.toSpliced(c, 1))
  }),
  cells((rows, chance) => {
    const c = chance.below(rows[0]?.length ?? 1)
    return rows.map((row) => row.toSpliced(c, 0, row[c] ?? ''))
  }),
  cells((rows) => rows.map((row) => row.toReversed())),
  // Another order of rows, many of one, the head alone.
  cells(([head = [], ...rows]) => [head, ...rows.toReversed()]),
  cells((rows, chance) => {
    const r = 1 + chance.below(Math.max(1, rows.length - 1))
    return rows.toSpliced(
      r,
      0,
      ...Array.from({ length: 1 + chance.below(400) }, () => rows[r] ?? []),
    )
  }),
  cells((rows) => rows.slice(0, 1)),
  cells((rows, chance) => rows.slice(0, 1 + chance.below(rows.length))),
  // Other marks between cells.
  ofText((text, chance) => text.replaceAll(',', chance.oneOf([';', '\t', ', ', ',,']))),
]
