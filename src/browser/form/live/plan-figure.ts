import { isQuantityId } from '../../../compute/uses/ids.ts'
import { fill } from '../../../model/pattern.ts'
import { wording } from '../../../render/drawings/oval/detail.ts'
import { drawPlan } from '../../../render/drawings/oval/plan.ts'
import { screenSvg } from '../../../render/drawings/screen-svg.ts'
import type { Telling } from './numbers.ts'
import type { Shown } from './worked.ts'

/** What the plan is drawn from, as one text: while it stays the same, so does the drawing. */
export const planKey = ({ manual }: Shown): string =>
  JSON.stringify([manual.geometry, manual.facility.system])

/**
 * The oval as it has been described, as SVG for a narrow column. It is drawn by itself, since a
 * drawing of the whole manual asks for all of the manual's quantities, which take a third of a second.
 * @param lengths What stands below it, for those who do not see it.
 */
export function planSvg(shown: Shown, lengths: readonly Telling[]): string {
  const { manual, library, computed } = shown
  const { words } = library
  const { engine } = computed
  const said = lengths.map(({ label, number, unit }) => `${label}: ${number} ${unit}`.trimEnd())
  const context = {
    manual,
    words: wording.schema.parse(words.labels[wording.group]),
    q: (name: string) => (isQuantityId(name) ? (engine.text(name) ?? '') : ''),
    si: (name: string) => (isQuantityId(name) ? engine.si(name) : undefined),
    alt: fill(words.live.drawn, { lengths: said.join('; ') }),
  }
  return screenSvg(drawPlan(context, 'column'))
}
