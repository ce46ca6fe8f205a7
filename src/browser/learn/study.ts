/** A lesson to read, or one of its questions; `again` when it was answered wrong before. */
export type Step = { readonly lesson: string; readonly question?: number; readonly again?: true }

/** Where somebody is in the lessons of a role. */
export type Study = {
  readonly steps: readonly Step[]
  /** The step at hand; as many as there are when all is done. */
  readonly at: number
  /** Questions that were answered wrong at least once, by lesson and number. */
  readonly missed: readonly string[]
}

/** A lesson and how many questions it has. */
export type Lesson = { readonly id: string; readonly questions: number }

const keyOf = ({ lesson, question = -1 }: Step): string => `${lesson} ${question}`

/** Lesson by lesson, each with its questions behind it. */
export const begin = (lessons: readonly Lesson[]): Study => ({
  steps: lessons.flatMap(({ id, questions }): Step[] => [
    { lesson: id },
    ...Array.from({ length: questions }, (_, question) => ({ lesson: id, question })),
  ]),
  at: 0,
  missed: [],
})

export const current = ({ steps, at }: Study): Step | undefined => steps[at]

export const goOn = (study: Study): Study => ({
  ...study,
  at: Math.min(study.at + 1, study.steps.length),
})

/** A question that was answered wrong comes back behind all others, until it is right. */
export function answered(study: Study, isRight: boolean): Study {
  const step = current(study)
  if (isRight || step?.question === undefined) return study
  const key = keyOf(step)
  return {
    ...study,
    steps: [...study.steps, { ...step, again: true }],
    missed: study.missed.includes(key) ? study.missed : [...study.missed, key],
  }
}

/** How often the question at hand has been asked before. */
export function askedBefore({ steps, at }: Study): number {
  const step = steps[at]
  return step ? steps.slice(0, at).filter((s) => keyOf(s) === keyOf(step)).length : 0
}

/** How many questions there are, and how many were right at once. */
export function tally({ steps, missed }: Study): {
  readonly questions: number
  readonly first: number
} {
  const questions = new Set(steps.filter((s) => s.question !== undefined).map(keyOf)).size
  return { questions, first: questions - missed.length }
}

/** The places of choices in the order in which they are shown: another one each time. */
export const turned = (count: number, times: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => (i + times) % count)

const isStep = (value: unknown): value is Step =>
  typeof value === 'object' && value !== null && 'lesson' in value

/**
 * What was kept of a study, where it is one of these lessons and not over; else undefined.
 * @param text As it was kept.
 */
export function resumed(text: string | null, lessons: readonly Lesson[]): Study | undefined {
  try {
    const found = JSON.parse(text ?? '') as Partial<Study>
    const plan = begin(lessons).steps
    const { steps = [], at = 0, missed = [] } = found
    const isSame = plan.every((step, i) => {
      const other = steps[i]
      return isStep(other) && keyOf(other) === keyOf(step)
    })
    return isSame && steps.every(isStep) && at > 0 && at < steps.length
      ? { steps, at, missed }
      : undefined
  } catch {
    return undefined
  }
}
