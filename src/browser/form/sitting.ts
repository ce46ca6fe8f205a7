import { textAt } from '../../edit/form/data.ts'
import {
  type Answered,
  answered,
  type Draft,
  draftOf,
  settled,
  steppedBack,
  steppedForward,
  type Tables,
  withTable,
} from '../../edit/form/draft.ts'
import { type Question, questionsOf } from '../../edit/form/question.ts'
import { type Screen, screensOf } from '../../edit/form/subjects.ts'
import { fittingTables } from '../../edit/readings/fitting.ts'
import type { Change } from '../../edit/splice.ts'
import { facilityFile } from '../../model/form-exchange.ts'
import type { Locale } from '../../model/quantity/format-quantity.ts'
import { facility } from '../../validate/schemas/facility.ts'
import type { Added, FacilityFiles, Host, Opened, Work, Worked } from './contract.ts'
import { type NotYet, notYetIn } from './not-yet.ts'
import type { Said } from './said.ts'
import { diskOf, isOther, isTyped, tablesBeside, tablesIn, unsavedTables } from './tables-beside.ts'

/**
 * After so long without a key everything is worked out anew, ms: sooner where that takes little, so
 * that it is seen at once, and not with every key where it takes long.
 */
const [shortest, longest] = [30, 120]

/** What has changed: a value, or what is asked at all. */
type Event = 'typed' | 'shape' | 'worked' | 'saved'

/** One sitting at the form: the file as it was opened and as it is now, and what follows from it. */
export type Sitting = {
  readonly said: Said
  readonly host: Host
  readonly name: string
  readonly screens: readonly Screen[]
  readonly questions: readonly Question[]
  readonly notYet: NotYet
  readonly draft: () => Draft
  /** Whether there is a file yet. */
  readonly isOnDisk: () => boolean
  /** The text that the file has on disk. */
  readonly saved: () => string
  /** The tables that can be typed in, as they are on disk. */
  readonly savedTables: () => Tables
  readonly files: () => FacilityFiles
  /** Names of tables and workbooks that the file can name. */
  readonly tableNames: () => readonly string[]
  /** Takes a table that was added to the files. */
  readonly takeAdded: (added: Added) => void
  readonly worked: () => Worked | undefined
  readonly locale: () => Locale
  /** Takes an answer; false where the file cannot. */
  readonly answer: (changes: readonly Change[], at: string) => boolean
  /** Takes a table as it is now, with what the file says of it; false where the file cannot. */
  readonly putTable: (
    table: { readonly name: string; readonly text: string },
    changes: readonly Change[],
    at: string,
  ) => boolean
  /** Takes a draft made elsewhere. */
  readonly take: (made: Answered) => boolean
  /** Says that another kind of thing is asked from now on: an entry of a list more or less. */
  readonly reshape: () => void
  readonly settle: () => void
  readonly back: () => void
  readonly forward: () => void
  /** Says what files on disk are now. */
  readonly keepSaved: (files: FacilityFiles) => void
  readonly listen: (listener: (event: Event) => void) => void
}

function localeOf(data: unknown): Locale {
  const system = textAt(data, ['units']) === 'metric' ? 'metric' : 'us'
  return { system, currency: textAt(data, ['currency']) ?? (system === 'us' ? 'USD' : 'EUR') }
}

/** Begins a sitting with what was opened; a draft of the last time goes before the file. */
export function sit(host: Host, work: Work, said: Said, opened: Opened): Sitting {
  const questions = questionsOf(facility)
  const screens = screensOf(said.form, questions).filter(
    ({ first, more }) => first.length + more.length > 0,
  )
  const listeners: ((event: Event) => void)[] = []
  // A new file begins with a remark for whoever reads it elsewhere.
  const disk = diskOf(opened, `${opened.head}# ${said.form.says.saving.remarks}\n`)
  let draft = draftOf(
    opened.draft.get(facilityFile) ?? disk.text(),
    new Map([...disk.tables(), ...tablesIn(opened.draft)]),
  )
  let worked: Worked | undefined
  let pause = longest
  let waiting: ReturnType<typeof setTimeout> | undefined
  const tell = (event: Event): void => {
    for (const listener of listeners) listener(event)
  }
  const beside = tablesBeside(opened)
  const files = (): FacilityFiles =>
    new Map([...beside.texts(), ...draft.tables, [facilityFile, draft.text]])
  const workOut = (): void => {
    const begin = performance.now()
    worked = work(
      new Map([...files(), ...fittingTables(draft.tables, localeOf(draft.data).system)]),
    )
    tell('worked')
    pause = Math.min(longest, Math.max(shortest, performance.now() - begin))
  }
  const put = (next: Draft, event: Event): void => {
    draft = next
    host.keep(new Map([[facilityFile, draft.text], ...unsavedTables(draft.tables, disk.tables())]))
    clearTimeout(waiting)
    waiting = setTimeout(workOut, pause)
    tell(event)
  }
  const take = (made: Answered, event: Event): boolean => {
    if (made.ok && isOther(made.draft, draft)) put(made.draft, event)
    return made.ok
  }
  waiting = setTimeout(workOut, 0)
  return {
    said,
    host,
    name: opened.name,
    screens,
    questions,
    notYet: notYetIn(opened.name),
    draft: () => draft,
    isOnDisk: disk.isThere,
    saved: disk.text,
    savedTables: disk.tables,
    files,
    tableNames: () => beside.names(draft.tables),
    takeAdded: (one) => {
      beside.add(one)
      const { name, text } = one
      if (text !== undefined && isTyped(name)) {
        disk.keep(new Map([[name, text]]))
        draft = { ...draft, tables: new Map([...draft.tables, [name, text]]) }
      }
      put(draft, 'shape')
    },
    worked: () => worked,
    locale: () => localeOf(draft.data),
    answer: (changes, at) => take(answered(draft, changes, at), 'typed'),
    putTable: (table, changes, at) => take(withTable(draft, table, changes, at), 'typed'),
    take: (made) => take(made, 'shape'),
    reshape: () => tell('shape'),
    settle: () => {
      draft = settled(draft)
    },
    back: () => put(steppedBack(draft), 'shape'),
    forward: () => put(steppedForward(draft), 'shape'),
    keepSaved: (now) => {
      disk.keep(now)
      tell('saved')
    },
    listen: (listener) => {
      listeners.push(listener)
    },
  }
}
