import { entryAbout } from '../../model/entry-about.ts'
import { factPaths, factSpec } from '../../model/fact-spec.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { type Base, baseSheet, baseTexts, paperOf, type TableTexts } from './base.ts'
import { cellText, valueAt } from './cell-text.ts'
import { isProcedure } from './cell-values.ts'
import type { Field } from './fields.ts'
import type { CellRole, Choice, Laid, LaidCell, LaidSheet } from './layout.ts'
import {
  type FormSubject,
  type ListSubject,
  readMe,
  type Subject,
  subjects,
  type TableSubject,
  workbookWords as words,
} from './subjects.ts'
import { tableKey, tablesNamed } from './tables-named.ts'

/** Lists to choose from, each a column of a sheet of its own. */
type Lists = {
  readonly columns: (readonly string[])[]
  /** Titles of the procedures that there are, by id. */
  readonly procedures: ReadonlyMap<string, string>
}

/** The column in which a list stands, 1 and up; it is added where it is not there yet. */
function listColumn(lists: Lists, choices: readonly string[]): number {
  const text = choices.join('\n')
  const at = lists.columns.findIndex((column) => column.join('\n') === text)
  if (at !== -1) return at + 1
  lists.columns.push(choices)
  return lists.columns.length
}

const capitalized = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

const cell = (text: string, role: CellRole): LaidCell => ({ text, role })

/** What is only so where one types the file: quotes, and true for yes. */
const withoutFile = (howTo: string): string =>
  howTo
    .split(/(?<=\.) /)
    .filter((sentence) => !/\bquotes\b/.test(sentence))
    .map((sentence) => sentence.replace(/^true\b/, 'Yes'))
    .join(' ')

/** What is said of an entry: how to measure it, from what to what, one of what. */
function noteOf({ about, range, choices, kind }: Field): string {
  const areTold = choices.every((choice) => about.howTo?.includes(choice) === true)
  return [
    withoutFile(about.howTo ?? ''),
    ...(range && kind === 'quantity'
      ? [words.range.replace('{low}', range[0]).replace('{high}', range[1])]
      : []),
    ...(areTold ? [] : [`${words['one-of']}: ${choices.join(', ')}.`]),
    ...(kind.startsWith('several') ? [words.several] : []),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ')
}

/** What may be chosen for an entry. */
const choicesFor = (field: Field): readonly string[] =>
  field.kind === 'yes-no' ? [words.yes, words.no] : field.choices

function choiceAt(
  field: Field,
  at: { readonly column: number; readonly from: number; readonly to: number | undefined },
  lists: Lists,
): Choice[] {
  const choices =
    field.path.join('.') === 'measurements.of'
      ? measurable
      : isProcedure(field)
        ? [...lists.procedures.values()]
        : choicesFor(field)
  if (choices.length === 0) return []
  const strict = !field.kind.startsWith('several') && choices !== measurable
  return [{ ...at, list: listColumn(lists, choices), strict }]
}

/** What can have been measured, by the names that the manual prints. */
const measurable: readonly string[] = [
  ...new Set(
    factPaths.filter((p) => !p.startsWith('practice.')).map((p) => factSpec(p)?.label ?? p),
  ),
].sort()

const formWidths = [44, 34, 64, 26, 30] as const

/** The group that begins with an entry, where one does: `width of the track`. */
function groupBefore(field: Field, before: Field | undefined): string | undefined {
  const above = field.path.slice(0, -1)
  if (above.length === 0 || above.join('.') === before?.path.slice(0, -1).join('.'))
    return undefined
  return entryAbout(above)?.label
}

function formSheet(subject: FormSubject, data: unknown, lists: Lists): LaidSheet {
  const rows: LaidCell[][] = [
    [cell(subject.about, 'title')],
    [words.what, words.value, words.how, words['such-as'], words.name].map((w) => cell(w, 'head')),
  ]
  const choices: Choice[] = []
  for (const [i, field] of subject.fields.entries()) {
    const group = groupBefore(field, subject.fields[i - 1])
    if (group !== undefined) rows.push([cell(capitalized(group), 'group')])
    const key = field.path.join('.')
    const isNeeded = subject.needed.includes(key)
    rows.push([
      cell(capitalized(field.about.label), isNeeded ? 'needed' : 'label'),
      cell(cellText(valueAt(data, field.path)), 'input'),
      cell(`${isNeeded ? `${words.needed}. ` : ''}${noteOf(field)}`, 'note'),
      cell(field.about.example ?? '', 'example'),
      cell(key, 'name'),
    ])
    choices.push(...choiceAt(field, { column: 2, from: rows.length, to: rows.length }, lists))
  }
  return {
    title: subject.title,
    widths: formWidths,
    rows,
    heads: { rows: 2, columns: 1 },
    choices,
    open: undefined,
    hidden: false,
    printed: 4,
  }
}

/** Rows that stand ready to be written in, and further ones in text format: 7/8 is no day there. */
const [ready, spare] = [20, 100]
const [narrowest, widest] = [14, 44]

/** Lines over which a note may go. */
const noteLines = 6

/** How wide a column must be for what stands in it, in characters; long words go over lines. */
const widthOf = (texts: readonly string[], note: string): number =>
  Math.min(
    widest,
    Math.max(
      narrowest,
      Math.ceil((note.length * 1.15) / noteLines),
      ...texts.map((text) => text.length + 2),
    ),
  )

/** A sheet with a line for each of many: heads, how to find it, an example, then the lines. */
function linesSheet(
  subject: ListSubject | TableSubject,
  title: string,
  columns: readonly { readonly head: string; readonly how: string; readonly suchAs: string }[],
  lines: readonly (readonly string[])[],
): Omit<LaidSheet, 'choices'> {
  const rowsOf = (rows: readonly (readonly string[])[], role: CellRole): LaidCell[][] =>
    rows.map((line) => [cell('', 'name'), ...line.map((text) => cell(text, role))])
  const blank = (length: number) => Array.from({ length }, () => columns.map(() => ''))
  return {
    title,
    widths: [
      16,
      ...columns.map(({ head, how, suchAs }, i) =>
        Math.max(
          widthOf([head, suchAs, ...lines.slice(0, 60).map((line) => line[i] ?? '')], how),
          columns.length < 8 ? 22 : 0,
        ),
      ),
    ],
    rows: [
      [cell(subject.about, 'title')],
      [cell('', 'head'), ...columns.map(({ head }) => cell(head, 'head'))],
      [cell(words.how, 'head'), ...columns.map(({ how }) => cell(how, 'note'))],
      [cell(words['such-as'], 'head'), ...columns.map(({ suchAs }) => cell(suchAs, 'example'))],
      ...rowsOf([...lines, ...blank(ready)], 'input'),
      ...rowsOf(blank(spare), 'spare').map((row) => [undefined, ...row.slice(1)]),
    ],
    heads: { rows: 2, columns: 2 },
    open: { from: 2, to: columns.length + 1 },
    hidden: false,
    printed: columns.length + 1,
  }
}

function listSheet(subject: ListSubject, data: unknown, lists: Lists): LaidSheet {
  const list = valueAt(data, subject.at)
  const lines = (Array.isArray(list) ? list : []).map((one: unknown) =>
    subject.fields.map((field) => {
      const text = cellText(valueAt(one, field.path.slice(subject.at.length)))
      return isProcedure(field) ? (lists.procedures.get(text) ?? text) : text
    }),
  )
  const columns = subject.fields.map((field) => ({
    head: capitalized(field.about.label),
    how: noteOf(field),
    suchAs: field.about.example ?? '',
  }))
  return {
    ...linesSheet(subject, subject.title, columns, lines),
    choices: subject.fields.flatMap((field, i) =>
      choiceAt(field, { column: i + 2, from: 5, to: undefined }, lists),
    ),
  }
}

/** The sheet of a table; the second of its kind has a number. */
const tableTitle = ({ title }: Pick<Subject, 'title'>, index: number): string =>
  index === 0 ? title : `${title} ${index + 1}`

function tableSheets(subject: TableSubject, base: Base): LaidSheet[] {
  const byColumn = {
    head: words['read-by'],
    how: words['read-by-how'],
    suchAs: 'A. Name',
  }
  const named = tablesNamed(base.data, subject)
  const sheetOf = (texts: TableTexts | undefined, index: number): LaidSheet => {
    const [head, ...lines] = texts ?? []
    const known = (name: string) =>
      subject.columns.find((c) => plainHead(c.head) === plainHead(name))
    const columns = [
      ...(head?.map((name) => ({
        head: name,
        how: known(name)?.how ?? '',
        // An example in other units than the head has would mislead.
        suchAs: subject.columns.find((c) => c.head === name)?.suchAs ?? '',
      })) ?? subject.columns),
      ...(subject.hasBy ? [byColumn] : []),
    ]
    const by = subject.hasBy ? [named[index]?.by ?? ''] : []
    const rows = lines.map((line) => [...line, ...by])
    return { ...linesSheet(subject, tableTitle(subject, index), columns, rows), choices: [] }
  }
  const there = Object.keys(base.tables).filter((key) => key.split('#')[0] === subject.id)
  return Array.from({ length: Math.max(1, there.length) }, (_, i) =>
    sheetOf(base.tables[tableKey(subject, i)], i),
  )
}

/** A head without its unit. */
const plainHead = (head: string): string => head.replace(/\s*[([].*$/, '').toLowerCase()

const hiddenSheet = (title: string, rows: readonly (readonly string[])[]): LaidSheet => ({
  title,
  widths: rows[0]?.map(() => narrowest) ?? [],
  rows: rows.map((row) => row.map((text) => cell(text, 'name'))),
  heads: { rows: 0, columns: 0 },
  choices: [],
  open: undefined,
  hidden: true,
  printed: 0,
})

/**
 * The workbook of a facility: a sheet for each subject with what the facility says now, the lists to
 * choose from, and what it was made of.
 * @param base Data of the facility file, and the texts of its tables; empty for a blank workbook.
 * @param procedures Titles of the procedures that there are, by id.
 */
export function layOut(
  base: Base,
  system: UnitSystem,
  procedures: ReadonlyMap<string, string>,
): Laid {
  const lists: Lists = { columns: [], procedures }
  const sheets = subjects(system).flatMap((subject) =>
    subject.is === 'form'
      ? [formSheet(subject, base.data, lists)]
      : subject.is === 'list'
        ? [listSheet(subject, base.data, lists)]
        : tableSheets(subject, base),
  )
  const first: LaidSheet = {
    title: words['read-me'],
    widths: [100],
    rows: readMe.map((text, i) => [cell(text, i === 0 ? 'title' : 'label')]),
    heads: { rows: 0, columns: 0 },
    choices: [],
    open: undefined,
    hidden: false,
    printed: 1,
  }
  const longest = Math.max(0, ...lists.columns.map((column) => column.length))
  const choices = Array.from({ length: longest }, (_, i) =>
    lists.columns.map((column) => column[i] ?? ''),
  )
  return {
    paper: paperOf(base, system),
    sheets: [
      first,
      ...sheets,
      hiddenSheet(words.choices, choices),
      hiddenSheet(
        baseSheet,
        baseTexts(base).map((text) => [text]),
      ),
    ],
  }
}
