import type { Draft, Tables } from '../../edit/form/draft.ts'
import { facilityFile } from '../../model/form-exchange.ts'
import { surveyFiles } from '../../model/survey.ts'
import type { Added, FacilityFiles, Opened } from './contract.ts'

const typed: readonly string[] = Object.values(surveyFiles)

/** Whether the readings of a table are typed in the form. */
export const isTyped = (name: string): boolean => typed.includes(name)

/** The tables that can be typed in, among files. */
export const tablesIn = (files: FacilityFiles): Tables =>
  new Map([...files].filter(([name]) => isTyped(name)))

/** Tables that say something else than on disk. */
export const unsavedTables = (tables: Tables, saved: Tables): Tables =>
  new Map([...tables].filter(([name, text]) => saved.get(name) !== text))

export const isOther = (a: Draft, b: Draft): boolean => a.text !== b.text || a.tables !== b.tables

/**
 * What the files on disk say that the form writes.
 * @param fresh The text of a file that is not there yet.
 */
export function diskOf({ files }: Pick<Opened, 'files'>, fresh: string) {
  let text = files.get(facilityFile) || fresh
  let isThere = Boolean(files.get(facilityFile))
  let tables = tablesIn(files)
  return {
    text: () => text,
    isThere: () => isThere,
    tables: () => tables,
    /** Says what files are now. */
    keep: (now: FacilityFiles): void => {
      text = now.get(facilityFile) ?? text
      tables = new Map([...tables, ...tablesIn(now)])
      isThere ||= now.has(facilityFile)
    },
  }
}

/** The files beside that of the fair, with those that were added to them. */
export function tablesBeside(opened: Pick<Opened, 'files' | 'workbooks'>) {
  let added: readonly Added[] = []
  const texts = (): FacilityFiles =>
    new Map([
      ...opened.files,
      ...added.flatMap(({ name, text }) => (text === undefined ? [] : [[name, text] as const])),
    ])
  return {
    add: (one: Added): void => {
      added = [...added, one]
    },
    texts,
    /** Names of tables and workbooks that the file can name. */
    names: (tables: Tables): readonly string[] =>
      [
        ...new Set([
          ...texts().keys(),
          ...tables.keys(),
          ...opened.workbooks,
          ...added.map(({ name }) => name),
        ]),
      ].filter((name) => !name.endsWith('.yaml')),
  }
}
