import { itemAt } from './item-at.ts'

/**
 * When each part is printed: 0 at once, 1 when those are there which it asks and which ask nobody, 2
 * when all of these are.
 */
export function wavesOf(asked: readonly (readonly number[])[]): readonly (0 | 1 | 2)[] {
  const asksNobody = (i: number): boolean => itemAt(asked, i).length === 0
  return asked.map((others, i) => (asksNobody(i) ? 0 : others.every(asksNobody) ? 1 : 2))
}
