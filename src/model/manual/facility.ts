import type { Capability } from '../capability.ts'
import type { Provenance } from '../figure.ts'
import type { Ink } from '../ink.ts'
import type { Material } from '../oval-choices.ts'
import type { DividerKind, Paper, SheetPaper } from '../papers.ts'
import type { UnitSystem } from '../quantity/kinds.ts'

/** What the manual is for, and how it is printed. */
export type ManualFacility = {
  readonly id: string
  readonly name: string
  readonly town: string
  readonly lang: string
  readonly system: UnitSystem
  readonly currency: string
  readonly paper: Paper
  readonly binder: {
    readonly sides: 1 | 2
    readonly sections: 'right-hand' | 'next'
    readonly dividers: DividerKind
    /** In which ink its pages go to paper; in black they are printed beside those in color. */
    readonly ink: Ink
  }
  /** Papers on which each posted sheet is printed; the first is the one that the site links to. */
  readonly sheetPapers: readonly SheetPaper[]
  readonly material: Material
  readonly revision: string
  /** Address of the site without a final slash, when it is put on a host: makes QR codes. */
  readonly siteAddress: string | undefined
  /** "half-mile", "800 m" … */
  readonly ovalName: string
}

/** A line of "facility at a glance". */
export type GlanceRow = {
  readonly label: string
  readonly text: string
  readonly provenance: Provenance
  readonly howTo: string
}

/** "Facility at a glance": what is known of one subject. */
export type GlanceGroup = { readonly title: string; readonly rows: readonly GlanceRow[] }

export type RaceDay = {
  readonly date: string
  readonly firstPost: string
  readonly races: number
  readonly interval: string
}

export type Machine = {
  readonly id: string
  readonly name: string
  readonly can: readonly Capability[]
  readonly from: string
  readonly facts: readonly GlanceRow[]
}
