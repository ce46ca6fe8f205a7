import type { Manual } from '../../../src/model/manual.ts'
import { type OvalContext, wording } from '../../../src/render/drawings/oval/detail.ts'
import { boxesMeet } from '../../../src/render/drawings/oval/label-places.ts'
import { planParts } from '../../../src/render/drawings/oval/plan.ts'
import type { DrawingSize } from '../../../src/render/drawings/sizes.ts'
import type { Words } from '../../../src/validate/schemas/words.ts'

export const contextOf = (manual: Manual, words: Words): OvalContext => ({
  manual,
  words: wording.schema.parse(words.labels['plan']),
  q: (name) => manual.quantities[name]?.text ?? '',
  si: (name) => manual.quantities[name]?.si,
  alt: 'plan',
})

/** Pairs of labels that lie on each other, and labels that leave the drawing. */
export function labelFaults(context: OvalContext, which: DrawingSize): string[] {
  const { labels, width } = planParts(context, which)
  return labels.flatMap((a, i) => [
    ...labels
      .slice(i + 1)
      .filter((b) => boxesMeet(a.box, b.box))
      .map((b) => `${a.lines[0]} on ${b.lines[0]}`),
    ...(a.box.left < 0 || a.box.right > width ? [`${a.lines[0]} outside`] : []),
  ])
}
