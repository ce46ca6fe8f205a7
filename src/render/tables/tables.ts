import type { FigureInput, Worksheet } from '../../model/figure.ts'
import type { ManualTable } from '../../model/manual/schedule.ts'
import type { Manual } from '../../model/manual.ts'
import type { Words } from '../../validate/schemas/words.ts'
import { createPen, type Pen } from '../views/pen.ts'
import { provenanceWords } from '../views/provenance-words.ts'

/** A cell; null where nothing is to be said. Numbers stay numbers. */
export type Cell = string | number | null

/** A table that other programs read: plain words and numbers, one head a column. */
export type DataTable = {
  /** Names its file. */
  readonly id: string
  readonly title: string
  readonly heads: readonly string[]
  readonly rows: readonly (readonly Cell[])[]
}

/** Where tables lie, in the folder of the manual and beside the pages. */
export const tablesFolder = 'tables'

export const tablePath = ({ id }: Pick<DataTable, 'id'>): string => `${tablesFolder}/${id}.csv`

/** All tables as one workbook. */
export const workbookPath = `${tablesFolder}/tables.xlsx`

const inputWords = (input: FigureInput, pen: Pen): string =>
  `${input.label}: ${input.text} [${provenanceWords(input.provenance, pen)}]`

/** A printed number as a number; null for fractions of inches, times and clocks. */
function plainNumber(text: string): number | null {
  const number = Number(text.replace(/,(?=\d{3})/g, ''))
  return Number.isFinite(number) ? number : null
}

const figureRows = (worksheet: Worksheet, pen: Pen): Cell[][] => {
  const rests = worksheet.inputs.map((input) => inputWords(input, pen)).join('; ')
  const { words } = pen
  return worksheet.outputs.map(({ id, label, value, estimate }) => [
    worksheet.number,
    id,
    label,
    ...(value.ok ? [value.text, plainNumber(value.number), value.unit] : [null, null, null]),
    value.ok ? value.si : null,
    value.ok ? (estimate ? words.tables.yes : words.tables.no) : null,
    value.ok ? null : value.reason,
    rests,
  ])
}

/** Every figure, with all that its worksheet rests on and where that comes from. */
function figures(pen: Pen): DataTable {
  const { words, manual } = pen
  let rows: DataTable['rows'] | undefined
  return {
    id: 'figures',
    title: words.tables.figures,
    heads: [
      words.tables.worksheet,
      words.tables.name,
      words.tables.what,
      words.tables.value,
      words.tables.number,
      words.tables.unit,
      words.tables.si,
      words.tables.estimate,
      words.tables.missing,
      words.tables.rests,
    ],
    // Worked out only when somebody reads the table.
    get rows() {
      rows ??= manual.worksheets.flatMap((worksheet) => figureRows(worksheet, pen))
      return rows
    },
  }
}

/** Tables of plans as one, those of several race days or subjects under each other with their titles. */
function together(id: string, title: string, parts: readonly ManualTable[], pen: Pen): DataTable[] {
  const [first] = parts
  if (!first) return []
  const alone = parts.length === 1
  const width = Math.max(...parts.map((part) => part.heads.length))
  const heads = parts.find((part) => part.heads.length === width)?.heads ?? first.heads
  return [
    {
      id,
      title,
      heads: [...(alone ? [] : [pen.words.tables.table]), ...heads.map(pen.plain)],
      rows: parts.flatMap((part) =>
        part.rows.map((row) => [
          ...(alone ? [] : [pen.plain(part.title)]),
          ...heads.map((_, i) => (row[i] === undefined ? null : pen.plain(row[i]))),
        ]),
      ),
    },
  ]
}

/** Which tables of plans are worth reckoning with: those of an id, one for each race day included. */
const isOf = (id: string, table: ManualTable): boolean =>
  table.id === id || (table.days !== undefined && table.id.replace(/-\d+$/, '') === id)

/** What a fair takes into other programs: figures with where they come from, dates, orders, crew, money. */
export function dataTables(manual: Manual, words: Words): readonly DataTable[] {
  const pen = createPen(manual, words, 'screen', {
    worksheetHref: () => undefined,
    procedureHref: () => undefined,
  })
  const all = [...manual.schedules, ...manual.board].flatMap((plan) => plan.tables)
  const named = (id: string): DataTable[] => {
    const parts = all.filter((table) => isOf(id, table))
    return together(id, pen.plain(parts[0]?.title.split(':')[0] ?? ''), parts, pen)
  }
  const ofPlans = ['countdown', 'orders', 'rota', 'board-money', 'race-day-money'].flatMap(named)
  return [figures(pen), ...ofPlans.filter((table) => table.rows.length > 0)]
}
