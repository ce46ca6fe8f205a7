import type * as z from 'zod'
import type { Result } from '../../model/problem.ts'
import type { Path } from '../../read/read-yaml.ts'
import type { FacilityFile } from '../schemas/facility.ts'
import { dailyLog } from './daily-log.ts'
import type { Import } from './import.ts'
import { moisture } from './moisture.ts'
import { railLine } from './rail-line.ts'
import { surveys } from './surveys.ts'
import { weather } from './weather.ts'

/** Every kind of file that a facility may bring along, by the name of its entry. */
export const imports = {
  surveys,
  weather,
  moisture,
  'daily-log': dailyLog,
  'rail-line': railLine,
} as const

type Kinds = typeof imports
type ImportName = keyof Kinds

type ValueOf<Kind> = Kind extends { readonly read: (...given: never[]) => Result<infer Value> }
  ? Value
  : never

/** What was read of each kind, in the order in which the facility file names the files. */
export type Imported = { readonly [Name in ImportName]: readonly ValueOf<Kinds[Name]>[] }

/** Before any file was read. */
export const nothingImported: Imported = {
  surveys: [],
  weather: [],
  moisture: [],
  'daily-log': [],
  'rail-line': [],
}

type Group = Kinds[ImportName]['under']

type EntriesUnder<Wanted extends Group> = {
  readonly [Name in ImportName as Kinds[Name]['under'] extends Wanted
    ? Name
    : never]: z.ZodOptional<Kinds[Name]['entries']>
}

/** The entries that may stand in a group of the facility file. */
export const entriesUnder = <Wanted extends Group>(group: Wanted): EntriesUnder<Wanted> =>
  Object.fromEntries(
    Object.entries(imports)
      .filter(([, kind]) => kind.under === group)
      .map(([name, kind]) => [name, kind.entries.optional()]),
  ) as unknown as EntriesUnder<Wanted>

/** A file that the facility file names, and where. */
type NamedFile<Entry> = { readonly entry: Entry; readonly at: Path }

/** The files of one kind that a facility names. */
export function filesNamed<Entry extends { readonly file: string }>(
  file: FacilityFile,
  name: string,
  { under }: Import<Entry, unknown>,
): readonly NamedFile<Entry>[] {
  const group: Readonly<Record<string, unknown>> = under === 'top' ? file : file[under]
  const path = under === 'top' ? [name] : [under, name]
  // The schema has let entries of this kind through and no others.
  const found = group[name] as Entry | readonly Entry[] | undefined
  if (found === undefined) return []
  return 'file' in found
    ? [{ entry: found, at: [...path, 'file'] }]
    : found.map((entry, i) => ({ entry, at: [...path, i, 'file'] }))
}
