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
import { surveyFiles } from '../../model/survey.ts'
import { facility } from '../../validate/schemas/facility.ts'
import type { FacilityFiles, Host, Opened, Work, Worked } from './contract.ts'
import { type NotYet, notYetIn } from './not-yet.ts'
import type { Said } from './said.ts'

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

/** The tables that can be typed in, among files. */
const tablesIn = (files: FacilityFiles): Tables =>
  new Map([...files].filter(([name]) => typed.includes(name)))

const typed: readonly string[] = Object.values(surveyFiles)

/** Tables that say something else than on disk. */
export const unsavedTables = (tables: Tables, saved: Tables): Tables =>
  new Map([...tables].filter(([name, text]) => saved.get(name) !== text))

const isOther = (a: Draft, b: Draft): boolean => a.text !== b.text || a.tables !== b.tables

/** Begins a sitting with what was opened; a draft of the last time goes before the file. */
export function sit(host: Host, work: Work, said: Said, opened: Opened): Sitting {
  const questions = questionsOf(facility)
  const screens = screensOf(said.form, questions).filter(
    ({ first, more }) => first.length + more.length > 0,
  )
  const listeners: ((event: Event) => void)[] = []
  // A new file begins with a remark for whoever reads it elsewhere.
  const remark = `${opened.head}# ${said.form.says.saving.remarks}\n`
  const onDisk = opened.files.get(facilityFile) || remark
  let isOnDisk = Boolean(opened.files.get(facilityFile))
  let saved = onDisk
  let savedTables = tablesIn(opened.files)
  let draft = draftOf(
    opened.draft.get(facilityFile) ?? onDisk,
    new Map([...savedTables, ...tablesIn(opened.draft)]),
  )
  let worked: Worked | undefined
  let pause = longest
  let waiting: ReturnType<typeof setTimeout> | undefined
  const tell = (event: Event): void => {
    for (const listener of listeners) listener(event)
  }
  const files = (): FacilityFiles =>
    new Map([...opened.files, ...draft.tables, [facilityFile, draft.text]])
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
    host.keep(new Map([[facilityFile, draft.text], ...unsavedTables(draft.tables, savedTables)]))
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
    isOnDisk: () => isOnDisk,
    saved: () => saved,
    savedTables: () => savedTables,
    files,
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
      saved = now.get(facilityFile) ?? saved
      savedTables = new Map([...savedTables, ...tablesIn(now)])
      isOnDisk ||= now.has(facilityFile)
      tell('saved')
    },
    listen: (listener) => {
      listeners.push(listener)
    },
  }
}
