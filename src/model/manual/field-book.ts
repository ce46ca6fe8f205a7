import type { ManualCaution } from './caution.ts'
import type { ManualChapter } from './chapter.ts'
import type { Finding } from './finding.ts'
import type { GlossaryTerm } from './glossary.ts'
import type { ManualProcedure } from './procedure.ts'
import type { ManualReckoner } from './reckoner.ts'
import type { ManualSchedule } from './schedule.ts'
import type { ManualSymptom } from './symptom.ts'
import type { Text } from './text.ts'

/** One thing that is shown of a procedure. */
export type ProcedureShown =
  | 'when'
  | 'figures'
  | 'measure'
  | 'look'
  | 'cautions'
  | 'drawing'
  | 'steps'
  | 'done'
  | 'failures'
  | 'stop'

/** A part of a page: something that stands elsewhere in the manual, or some of it. */
export type FieldBookPart =
  | { readonly kind: 'emergency' }
  /** What to say to dispatch, in a few lines. */
  | { readonly kind: 'say' }
  | {
      readonly kind: 'procedure'
      readonly procedure: ManualProcedure
      readonly show: readonly ProcedureShown[]
      /** Ids of the ways of working that are shown. */
      readonly methods: readonly string[]
    }
  | { readonly kind: 'plan'; readonly plan: ManualSchedule }
  | { readonly kind: 'reckoner'; readonly reckoner: ManualReckoner }
  | {
      readonly kind: 'figures'
      /** Names in `Manual.quantities`; a label of the author's or, without one, the manual's own. */
      readonly figures: readonly { readonly name: string; readonly label: Text | undefined }[]
    }
  | { readonly kind: 'chapter'; readonly chapter: ManualChapter }
  | { readonly kind: 'drawing'; readonly drawing: string }
  | { readonly kind: 'cautions'; readonly cautions: readonly ManualCaution[] }
  | { readonly kind: 'symptoms'; readonly symptoms: readonly ManualSymptom[] }
  | { readonly kind: 'terms'; readonly terms: readonly GlossaryTerm[] }
  | { readonly kind: 'findings'; readonly findings: readonly Finding[] }

export type FieldBookPage = {
  readonly id: string
  readonly title: string
  /** Left out where the book would be longer than what is carried. */
  readonly spare: boolean
  readonly parts: readonly FieldBookPart[]
}

/** Where somebody new begins in the binder. */
export type ReadFirst = {
  readonly kind: 'procedure' | 'chapter' | 'plan'
  readonly id: string
  readonly title: string
}

/** Small pages, made of the rest of the manual. */
export type ManualBooklet = {
  readonly pages: readonly FieldBookPage[]
  /** Ids of cautions that stand on a page of their own, so that steps need not repeat them. */
  readonly common: readonly string[]
}

/** What a beginner carries, and reads first. */
export type ManualFieldBook = ManualBooklet & {
  readonly readFirst: readonly ReadFirst[]
}
