/** Work in steps: between any two of them other work may have its turn. */
export type Steps<T> = Generator<undefined, T, undefined>

/** Does all steps one after another. */
export function atOnce<T>(steps: Steps<T>): T {
  for (;;) {
    const step = steps.next()
    if (step.done) return step.value
  }
}
