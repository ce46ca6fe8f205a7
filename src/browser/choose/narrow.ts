/** A question: for each of its answers the places of what it fits, by their ids. */
export type Question = readonly (readonly string[])[]

/** The answer to each question, by its place among the answers; undefined where there is none yet. */
export type Chosen = readonly (number | undefined)[]

/**
 * What fits all answers. A question that says nothing about something does not rule it out.
 * @param all Everything that there is, by ids.
 */
export const narrow = (
  questions: readonly Question[],
  chosen: Chosen,
  all: readonly string[],
): readonly string[] =>
  all.filter((id) =>
    questions.every((answers, i) => {
      const answer = chosen[i]
      return (
        answer === undefined ||
        answers[answer]?.includes(id) === true ||
        !answers.some((fits) => fits.includes(id))
      )
    }),
  )

/** The same answers, but for one question. */
export const answering = (chosen: Chosen, question: number, answer: number | undefined): Chosen =>
  chosen.map((other, i) => (i === question ? answer : other))

/** How many would fit with each answer of a question in place of the one that it has. */
export const countsOf = (
  questions: readonly Question[],
  chosen: Chosen,
  all: readonly string[],
  question: number,
): readonly number[] =>
  (questions[question] ?? []).map(
    (_, answer) => narrow(questions, answering(chosen, question, answer), all).length,
  )

/**
 * The next question that tells apart what is left; undefined when none does.
 */
export const nextQuestion = (
  questions: readonly Question[],
  chosen: Chosen,
  all: readonly string[],
): number | undefined => {
  const left = narrow(questions, chosen, all).length
  const next = questions.findIndex(
    (_, i) =>
      chosen[i] === undefined &&
      countsOf(questions, chosen, all, i).some((count) => count > 0 && count < left),
  )
  return next < 0 ? undefined : next
}

/**
 * What to do first to tell causes apart: what leads to the most different procedures.
 * @param causes What is done for each cause, and where it leads.
 * @returns each thing to do once, the most telling first.
 */
export function mostTelling(
  causes: readonly { readonly by: string; readonly leads: string }[],
): readonly string[] {
  const leads = new Map<string, Set<string>>()
  for (const cause of causes)
    leads.set(cause.by, (leads.get(cause.by) ?? new Set()).add(cause.leads))
  return [...leads].sort(([, a], [, b]) => b.size - a.size).map(([by]) => by)
}
