import type { DayFactGroup, DayProgram, Sums } from './manual/today.ts'

/** What pages say of the numbers of a day; some with places for what varies. */
export type DayWords = Readonly<
  Record<
    | 'now'
    | 'manual'
    | 'notKnown'
    | 'none'
    | 'look'
    | 'undo'
    | 'undoAll'
    | 'again'
    | 'send'
    | 'copied'
    | 'notSent'
    | 'link'
    | 'same'
    | 'use'
    | 'forget'
    | 'forThisPage'
    | 'rest'
    | 'see'
    | 'next'
    | 'nowAt'
    | 'timeHint'
    | 'noTime'
    | 'clear'
    | 'mine'
    | 'less'
    | 'more'
    | 'undoOne'
    | 'changed'
    | 'putInAt'
    | 'earlier'
    | 'sent'
    | 'unread'
    | 'outside'
    | 'whole'
    | 'in'
    | 'ago'
    | 'raceDay'
    | 'said',
    string
  >
>

/** Made with the pages, in a script of its own: what the script of the day's numbers works with. */
export type DayFile = {
  /** Under what the numbers of this facility are kept. */
  readonly key: string
  readonly estimate: string
  readonly words: DayWords
  readonly groups: readonly DayFactGroup[]
  readonly programs: readonly DayProgram[]
  readonly sums: Sums
}
