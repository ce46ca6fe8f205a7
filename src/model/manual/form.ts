import type { KeptWord, PhoneField } from '../records.ts'
import type { Text } from './text.ts'

/**
 * A place to write on a form: width in sixths of the page, height in lines of handwriting. Where
 * there are choices, they are ticked.
 */
export type FormBox = {
  readonly label: Text
  readonly wide: number
  readonly tall: number
  readonly choices: readonly Text[]
  /** What a phone keeps in its place; nothing said: words. */
  readonly keeps: readonly PhoneField[]
}

/** How a cell is filled in: a word or number by hand, or a tick. */
export type FormWrite = 'line' | 'check'

/** A form to write on. */
export type ManualForm = {
  readonly id: string
  readonly title: Text
  readonly about: Text
  /** Who fills it in, when, and where it is kept. */
  readonly who: Text
  readonly moment: Text
  readonly kept: Text
  readonly boxes: readonly FormBox[]
  readonly table:
    | {
        /** `wide` is the width of a column against the others. */
        readonly columns: readonly {
          readonly head: Text
          readonly wide: number
          readonly write: FormWrite
          readonly keeps: readonly PhoneField[]
        }[]
        /**
         * Rows that stand ready, by their first cell; `write` says how all of the row is filled in
         * where the columns do not.
         */
        readonly rows: readonly { readonly head: Text; readonly write: FormWrite | undefined }[]
        /** Blank rows at the least; the last page is filled with more. 0: none at all. */
        readonly spare: number
        /** Under which name a phone keeps its lines; nothing said: under the form's. */
        readonly keeps: KeptWord | undefined
      }
    | undefined
  readonly after: readonly FormBox[]
  readonly sign: readonly Text[]
  /** What it is called on a phone, where it can be filled in there. */
  readonly phone: string | undefined
}
