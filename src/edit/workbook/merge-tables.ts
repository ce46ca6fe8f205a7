import type { Problem } from '../../model/problem.ts'
import { problemAt } from '../../read/source-file.ts'
import type { Base, TableTexts } from './base.ts'
import type { Found, FoundTable } from './found.ts'
import { type Asked, makeAnew } from './merge.ts'
import { workbookWords as words } from './subjects.ts'
import { sameTexts, tableFileText, tableKey, tablesNamed } from './tables-named.ts'

/** A table that is written anew beside the facility file. */
export type TableChange = {
  readonly file: string
  readonly text: string
  readonly readings: number
  readonly found: FoundTable
}

export type MergedTables = {
  readonly tables: readonly TableChange[]
  readonly asked: readonly Asked[]
  readonly problems: readonly Problem[]
}

const nothing: MergedTables = { tables: [], asked: [], problems: [] }

/** A name that no file of the folder has yet: depths.csv, depths-2.csv … */
function freeName(file: string, taken: readonly string[]): string {
  for (let n = 1; ; n++) {
    const name = n === 1 ? file : file.replace(/(\.\w+)$/, `-${n}$1`)
    if (!taken.includes(name)) return name
  }
}

const told = (
  { file, place }: FoundTable,
  code: Problem['code'],
  message: string,
  hint: string,
): MergedTables => ({ ...nothing, problems: [problemAt(file, place, code, message, { hint })] })

const changed = (found: FoundTable, file: string, asked: readonly Asked[]): MergedTables => ({
  tables: [{ file, text: tableFileText(found.texts), readings: found.texts.length - 1, found }],
  asked,
  problems: [],
})

/** A table that the facility does not have yet. */
function added(found: FoundTable, data: unknown, taken: readonly string[]): MergedTables {
  const { subject, by, place } = found
  if (subject.hasBy && by === undefined)
    return told(
      found,
      'schema/missing',
      'nobody says who took these readings',
      `write it into a column "${words['read-by']}"`,
    )
  const file = freeName(subject.file, taken)
  const value = {
    ...(subject.of === undefined ? {} : { of: subject.of }),
    file,
    ...(by === undefined || !subject.hasBy ? {} : { by }),
  }
  const list = (data as Readonly<Record<string, unknown>> | undefined)?.[subject.entry]
  const path =
    subject.of === undefined
      ? [subject.entry]
      : [subject.entry, Array.isArray(list) ? list.length : 0]
  return changed(found, file, [{ path, value, place, before: undefined }])
}

/** What is known of the tables of a facility. */
export type Tables = {
  /** Texts of its tables by `tableKey`. */
  readonly texts: Readonly<Record<string, TableTexts>>
  /** Names of the files in its folder. */
  readonly files: readonly string[]
}

function mergeTable(
  found: FoundTable,
  data: unknown,
  base: Base | undefined,
  { texts, files }: Tables,
): MergedTables {
  const { subject, index, place, by } = found
  const named = tablesNamed(data, subject)
  const at = named[index]
  const now = texts[tableKey(subject, index)]
  const own = Object.keys(texts).filter((key) => key.startsWith(`${subject.id}#`))
  if (
    own.some((key) => sameTexts(texts[key], found.texts)) &&
    (!base || sameTexts(now, found.texts))
  ) {
    const isOther = base && at && subject.hasBy && by !== undefined && by !== at.by
    return isOther
      ? { ...nothing, asked: [{ path: [...at.path, 'by'], value: by, place, before: at.by }] }
      : nothing
  }
  if (!at) return added(found, data, files)
  if (!base)
    return subject.of === undefined
      ? told(
          found,
          'facility/odd',
          `the facility has this table already, as ${at.file}`,
          'add the lines there; or write them into the workbook that npm run workbook makes',
        )
      : added({ ...found, index: named.length }, data, files)
  const then = base.tables[tableKey(subject, index)]
  if (sameTexts(then, found.texts))
    return {
      ...nothing,
      problems: [
        problemAt(
          found.file,
          place,
          'facility/odd',
          `${at.file} says something else by now: it was left as it is`,
          { hint: makeAnew, severity: 'warning' },
        ),
      ],
    }
  if (!sameTexts(then, now))
    return told(
      found,
      'facility/odd',
      `${at.file} has been changed since this workbook was made`,
      makeAnew,
    )
  const file = /\.csv$/i.test(at.file) ? at.file : freeName(subject.file, files)
  const moved: Asked[] =
    file === at.file
      ? []
      : [
          { path: [...at.path, 'file'], value: file, place, before: at.file },
          ...(at.sheet === undefined
            ? []
            : [{ path: [...at.path, 'sheet'], value: undefined, place, before: at.sheet }]),
        ]
  const who: Asked[] =
    subject.hasBy && by !== undefined && by !== at.by
      ? [{ path: [...at.path, 'by'], value: by, place, before: at.by }]
      : []
  return changed(found, file, [...moved, ...who])
}

/** What sheets of readings change of a facility: tables beside its file, and how it names them. */
export function mergeTables(
  found: Found,
  data: unknown,
  base: Base | undefined,
  tables: Tables,
): MergedTables {
  let all = nothing
  let so = data
  for (const one of found.tables) {
    const files = [...tables.files, ...all.tables.map((t) => t.file)]
    const made = mergeTable(one, so, base, { ...tables, files })
    all = {
      tables: [...all.tables, ...made.tables],
      asked: [...all.asked, ...made.asked],
      problems: [...all.problems, ...made.problems],
    }
    // A second new table of a kind is counted behind the first.
    for (const { path, value } of made.asked) {
      if (path.length !== 2 || typeof path[1] !== 'number') continue
      const list = (so as Readonly<Record<string, unknown>> | undefined)?.[String(path[0])]
      so = {
        ...(so as object | undefined),
        [String(path[0])]: [...(Array.isArray(list) ? list : []), value],
      }
    }
  }
  return all
}
