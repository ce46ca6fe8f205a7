import { surveyFiles } from './survey.ts'

/** The file of a facility in its folder. */
export const facilityFile = 'facility.yaml'

/** The files that the form writes, and no others. */
export const savedFiles: readonly string[] = [facilityFile, ...Object.values(surveyFiles)]

/** Unsaved texts by the names of their files. */
export type DraftFiles = Readonly<Record<string, string>>

/** What is kept of texts: those of files that the form writes. */
export const draftFiles = (given: unknown): DraftFiles =>
  Object.fromEntries(
    Object.entries(typeof given === 'object' && given !== null ? given : {}).filter(
      ([name, text]) => savedFiles.includes(name) && typeof text === 'string',
    ),
  )

/** A facility folder, as the program tells the page of it. */
export type OpenFolder = {
  /** How the folder is called. */
  readonly name: string
  /** Where it lies, or will lie once the fair has a name. */
  readonly where: string
  /**
   * Stand for what the files say that the form writes; whoever saves one sends the tag that was seen
   * last.
   */
  readonly tags: Readonly<Record<string, string>>
  /** Texts by their path in the folder. */
  readonly files: Readonly<Record<string, string>>
  /** Workbooks alike, in Base64. */
  readonly workbooks: Readonly<Record<string, string>>
  readonly draft?: DraftFiles
  /** With what a facility file begins that is not there yet. */
  readonly head: string
}

/** What the page is told when it is opened. */
export type FormState = {
  readonly open?: OpenFolder
  /** Folders that may be opened, where none is yet; a choice names one by its place in this list. */
  readonly folders: readonly { readonly name: string; readonly where: string }[]
}

/** What is asked for on the first screen: one of the folders, or a new one. */
export type FormChoice = { readonly folder: number | 'new' }

/** Stages of making a manual, in their order. */
export const makingStages = ['compute', 'print', 'render', 'write'] as const

export type MakingStage = (typeof makingStages)[number]

/** How far the program is with a manual. */
export type MakingEvent =
  | { readonly kind: 'stage'; readonly stage: MakingStage }
  | {
      readonly kind: 'made'
      readonly address: string
      /** The folder in which it lies. */
      readonly where: string
      /** Why there are no PDFs, where there are none. */
      readonly why: string
    }
  | { readonly kind: 'failed'; readonly why: string }
