import { chanceFrom } from './chance.ts'
import type { Ground } from './ground.ts'
import { answers } from './subjects/answers.ts'
import { facilityFile, ownProcedures, railLines, tables } from './subjects/facility-folder.ts'
import { fairs } from './subjects/fairs.ts'
import { buildRecords, prints } from './subjects/kept-files.ts'
import { facts, libraryFiles, words } from './subjects/library.ts'
import { phone } from './subjects/phone.ts'
import { readings } from './subjects/readings.ts'
import type { Run, Subject } from './subjects/subject.ts'
import { templates } from './subjects/templates.ts'
import { workbooks } from './subjects/workbooks.ts'

/** Every kind of file, with its share of the runs. */
const subjects = {
  facility: { share: 17, subject: facilityFile },
  answers: { share: 4, subject: answers },
  readings: { share: 2, subject: readings },
  phone: { share: 3, subject: phone },
  fairs: { share: 10, subject: fairs },
  tables: { share: 13, subject: tables },
  workbooks: { share: 6, subject: workbooks },
  'rail-lines': { share: 8, subject: railLines },
  procedures: { share: 6, subject: ownProcedures },
  library: { share: 11, subject: libraryFiles },
  words: { share: 5, subject: words },
  facts: { share: 3, subject: facts },
  templates: { share: 6, subject: templates },
  prints: { share: 3, subject: prints },
  records: { share: 3, subject: buildRecords },
} as const satisfies Record<string, { share: number; subject: Subject }>

export type SubjectName = keyof typeof subjects
export const subjectNames = Object.keys(subjects) as SubjectName[]

const drawn = subjectNames.flatMap((name) =>
  Array.from({ length: subjects[name].share }, () => name),
)

/** A run that can be repeated: its name says all of it. */
export type NamedRun = Run & {
  readonly name: string
  readonly subject: SubjectName
  /** How long it took, ms. */
  readonly took: number
}

/** The kinds of file of some runs, by seed: the shares are kept in any hundred of them. */
export const subjectOf = (seed: number): SubjectName =>
  drawn[(((seed * 37) % drawn.length) + drawn.length) % drawn.length] ?? 'facility'

/** Changes one file by chance and looks at what comes of it; a crash is a fault like others. */
export async function shakeOnce(
  ground: Ground,
  seed: number,
  subject: SubjectName = subjectOf(seed),
): Promise<NamedRun> {
  const started = performance.now()
  const named = { name: `${subject}-${seed}`, subject }
  try {
    const run = await subjects[subject].subject(ground, chanceFrom(seed))
    return { ...run, ...named, took: performance.now() - started }
  } catch (error) {
    const said = error instanceof Error ? (error.stack ?? error.message) : String(error)
    return {
      ...named,
      file: '?',
      by: [],
      ending: 'refused',
      faults: [`crash: ${said}`],
      took: performance.now() - started,
    }
  }
}
