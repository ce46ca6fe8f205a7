import type { Manual } from '../../model/manual.ts'
import { binderStock, paperSize } from '../../model/papers.ts'
import { type RenderAssets, stylesOf } from '../assets.ts'
import { createTemplates } from '../text/templates.ts'
import { dividedParts } from './divided-parts.ts'

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
  const { paper } = manual.facility
  const [width, height] = paperSize(paper)
  const { tab } = binderStock(paper)
  const leaves = dividedParts(manual, assets.words).map((part, i) => ({
    ...part,
    place: i % tabsInBank,
  }))
  const size = `@page{size:${width + tab}mm ${height}mm;margin:0}.leaf{width:${width + tab}mm;height:${height}mm;--tab:${tab}mm;--bank:${height / tabsInBank}mm}`
  return {
    css: [stylesOf(assets, 'shared'), size, stylesOf(assets, 'dividers')].join('\n'),
    body: createTemplates(assets.templates).render('dividers', {
      leaves,
      facility: manual.facility,
    }),
  }
}
