import type { Manual } from '../../model/manual.ts'
import type { Paper } from '../../model/papers.ts'
import type { RenderAssets } from '../assets.ts'
import { dividedParts } from '../binder/divided-parts.ts'
import { createTemplates } from '../text/templates.ts'

/**
 * Leaves with tabs are sold as wide as the paper and half an inch (15 mm) more; sizes in
 * millimeters.
 */
export const tabStock: Readonly<
  Record<Paper, { readonly body: readonly [number, number]; readonly tab: number }>
> = {
  letter: { body: [215.9, 279.4], tab: 12.7 },
  a4: { body: [210, 297], tab: 15 },
}

/**
 * Tabs in one bank: as many leaves cover the edge from top to foot, then the next bank begins at
 * the top again.
 */
export const tabsInBank = 5

/**
 * Dividers to be printed on leaves with cut tabs, one for each part of the binder in its order:
 * number and title on the tab, and on the leaf what is behind it. `css` and `body` of one document.
 */
export function renderDividers(
  manual: Manual,
  assets: RenderAssets,
): { readonly css: string; readonly body: string } {
  const {
    body: [width, height],
    tab,
  } = tabStock[manual.facility.paper]
  const leaves = dividedParts(manual, assets.words).map((part, i) => ({
    ...part,
    place: i % tabsInBank,
  }))
  const size = `@page{size:${width + tab}mm ${height}mm;margin:0}.leaf{width:${width + tab}mm;height:${height}mm;--tab:${tab}mm;--bank:${height / tabsInBank}mm}`
  return {
    css: [assets.styles['shared'], size, assets.styles['dividers']].join('\n'),
    body: createTemplates(assets.templates).render('dividers/dividers', {
      leaves,
      facility: manual.facility,
    }),
  }
}
