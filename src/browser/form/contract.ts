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
  /** An unsaved draft of `facility.yaml` from the last time, where there is one. */
  readonly draft: string | undefined
}

export type Saved =
  | { readonly kind: 'saved' }
  /** Somebody else has changed the file; this is what it says now. */
  | { readonly kind: 'changed'; readonly text: string }
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
  /** Writes `facility.yaml`; a change of somebody else is never written over. */
  readonly save: (text: string) => Promise<Saved>
  /** Keeps a draft in the browser, so that closing the page loses nothing. */
  readonly keep: (text: string) => void
  readonly make: (files: FacilityFiles, tell: (step: Making) => void) => Promise<void>
}
