import type { Manual } from '../../model/manual.ts'
import type { Words } from '../../validate/schemas/words.ts'

/** Parts behind the sections, in their order. */
const backParts = ['plans', 'symptoms', 'reckoners', 'safety', 'worksheets', 'glossary'] as const

export type BackPart = {
  readonly id: (typeof backParts)[number]
  readonly title: string
  readonly number: number
}

/** The parts behind the sections that this manual has, numbered on from them. */
export const backPartsOf = (manual: Manual, words: Words): readonly BackPart[] =>
  backParts
    .filter((id) => id !== 'plans' || manual.schedules.length > 0)
    .map((id, i) => ({ id, title: words.parts[id], number: manual.sections.length + i + 1 }))

/** What stands on a divider: number and title of the part behind it, and what is in it. */
export type DividedPart = {
  readonly number: number
  readonly title: string
  readonly contents: readonly string[]
}

/** Every numbered part of a binder, in its order. */
export const dividedParts = (manual: Manual, words: Words): readonly DividedPart[] => [
  ...manual.sections.map((s) => ({
    number: s.number,
    title: s.title,
    contents: s.procedures.flatMap((id) =>
      manual.procedures.filter((p) => p.id === id).map((p) => `${p.number}  ${p.title}`),
    ),
  })),
  ...backPartsOf(manual, words).map((b) => ({
    number: b.number,
    title: b.title,
    contents: b.id === 'plans' ? manual.schedules.map((p) => p.title) : [],
  })),
]
