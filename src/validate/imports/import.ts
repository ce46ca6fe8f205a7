import type { Place, Result } from '../../model/problem.ts'
import type { Path } from '../../read/read-yaml.ts'
import type { SourceFile } from '../../read/source-file.ts'
import type { FacilityFile } from '../schemas/facility.ts'

/** A file that the facility file names, and the path of the entry that names it. */
type NamedFile<Entry> = {
  readonly name: string
  readonly at: Path
  readonly entry: Entry
}

/**
 * A kind of file that a facility may bring along: where its file names some, and how one is read
 * and checked. A new kind is a file beside this one and a line in `imports.ts`; its value is there
 * for the calculations under the same name.
 */
export type Import<Entry, Value> = {
  readonly named: (file: FacilityFile) => readonly NamedFile<Entry>[]
  /**
   * All faults of the file at once.
   * @param at The place of the name in the facility file.
   */
  readonly read: (
    source: SourceFile,
    entry: Entry,
    facility: FacilityFile,
    at: Place,
  ) => Result<Value>
}
