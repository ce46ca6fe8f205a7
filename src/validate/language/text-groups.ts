import type { ItemText } from '../texts-of.ts'

/** The texts of a file by the steps that lead to them: what the file of another language holds. */
export type Texts = ItemText | TextGroup
export type TextGroup = ReadonlyMap<string | number, Texts>

export const isGroup = (texts: Texts): texts is TextGroup => texts instanceof Map

/** Puts texts under the steps of their addresses. */
export function groupTexts(texts: readonly ItemText[], depth = 0): TextGroup {
  const steps = new Set(texts.map((t) => t.address[depth] ?? ''))
  return new Map(
    [...steps].map((step): [string | number, Texts] => {
      const under = texts.filter((t) => t.address[depth] === step)
      const only = under.find((t) => t.address.length === depth + 1)
      return [step, only ?? groupTexts(under, depth + 1)]
    }),
  )
}

export const countTexts = (texts: Texts): number =>
  isGroup(texts) ? [...texts.values()].reduce((sum, t) => sum + countTexts(t), 0) : 1

/** Whether a group stands for a list: its entries are found by their places. */
export const isList = (group: TextGroup): boolean =>
  [...group.keys()].every((step) => typeof step === 'number')
