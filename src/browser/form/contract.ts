import type { Computed } from '../../compute/compute-facility.ts'
import type { Manual } from '../../model/manual.ts'
import type { Problem } from '../../model/problem.ts'
import type { Facility } from '../../validate/check-facility.ts'
import type { Library } from '../../validate/check-library.ts'

/** Files of a facility folder by their path in it: `facility.yaml`, `depths.csv`. */
export type FacilityFiles = ReadonlyMap<string, string>

/** What the answers make. */
export type Worked = {
  readonly problems: readonly Problem[]
  readonly facility: Facility | undefined
  readonly computed: Computed | undefined
  readonly manual: Manual | undefined
  /** What all of it is worded with. */
  readonly library: Library
  /** Paths of answers that were left out because they do not fit. */
  readonly leftOut: readonly string[]
  /** Paths where something stands in, since nobody has said it and nothing works without it. */
  readonly standIns: readonly string[]
}

/** Works the answers out; never throws over what somebody typed. */
export type Work = (files: FacilityFiles) => Worked

export type Opened = {
  /** How the folder or file is called. */
  readonly name: string
  readonly files: FacilityFiles
  /** What the last time was typed and not saved: `facility.yaml`, tables beside it. */
  readonly draft: FacilityFiles
  /** With what a facility file begins that is not there yet. */
  readonly head: string
  /** Workbooks beside the files, by name. */
  readonly workbooks: readonly string[]
}

/** A table that somebody has added to the files; a workbook has no text. */
export type Added = { readonly name: string; readonly text: string | undefined }

export type Saved =
  | { readonly kind: 'saved' }
  /** Somebody else has changed a file; this is what it says now. */
  | { readonly kind: 'changed'; readonly file: string; readonly text: string }
  | { readonly kind: 'failed'; readonly why: string }

/** How far the making of a manual is; the last says where it lies, or why there is none. */
export type Making =
  | { readonly kind: 'stage'; readonly text: string }
  | { readonly kind: 'made'; readonly address: string; readonly text: string }
  | { readonly kind: 'failed'; readonly why: string }

/** Where the page's files come from and go to: the program behind it, or the browser alone. */
export type Host = {
  readonly kind: 'program' | 'page'
  readonly open: () => Promise<Opened>
  /**
   * Writes `facility.yaml` and the tables that were typed in, those of them that are given; a change
   * of somebody else is never written over.
   */
  readonly save: (files: FacilityFiles) => Promise<Saved>
  /** Keeps what is not saved, so that closing the page loses nothing. */
  readonly keep: (files: FacilityFiles) => void
  /** Lets somebody add a table, where the files are not those of a folder; undefined where none was. */
  readonly add?: () => Promise<Added | undefined>
  readonly make: (files: FacilityFiles, tell: (step: Making) => void) => Promise<void>
}
