import type * as z from 'zod'
import type { Place, Result } from '../../model/problem.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import type { SourceFile } from '../../read/source-file.ts'

/** An entry of the facility file that names a file beside it. */
type Entry = { readonly file: string }

/** What a file is read against: where the facility file names it, and where the facility lies. */
export type ImportContext = {
  readonly at: Place
  /** The date of the manual, `YYYY-MM-DD`: nothing has been seen after it. */
  readonly date: string
  /** Units of the facility, where they are known. */
  readonly units?: UnitSystem | undefined
  /** Degrees, north and east positive, where the facility file says so. */
  readonly latitude: number | undefined
  readonly longitude: number | undefined
}

/**
 * A kind of file that a facility may bring along, declared in one place: where the facility file
 * names it, and how it is read and checked. A new kind is a file beside this one and its line in
 * `imports.ts`; the schema of the facility file, the loader and the calculations find it there.
 */
export type Import<Named extends Entry, Value> = {
  /** The group of the facility file in which its entry stands; `top` for the file itself. */
  readonly under: 'top' | 'oval'
  /** Its entry there: one, or a list where there may be several files. */
  readonly entries: z.ZodType<Named | readonly Named[]>
  /** Reads one file and reports all its faults at once. */
  readonly read: (source: SourceFile, entry: Named, context: ImportContext) => Result<Value>
}
