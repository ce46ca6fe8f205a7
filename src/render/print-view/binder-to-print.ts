import type { Ink } from '../../model/ink.ts'
import type { Manual } from '../../model/manual.ts'
import type { PrintWork } from '../../model/print-view.ts'
import type { RenderAssets } from '../assets.ts'
import { indexMargin } from '../binder/edge-tabs.ts'
import { elsewhere } from '../binder/link-parts.ts'
import { margins, textArea } from '../binder/page-rules.ts'
import { renderBinder } from '../binder/render-binder.ts'
import { wholePageRules } from '../binder/whole-page-rules.ts'
import type { ToPrint } from './print-view.ts'

/** CSS pixels. */
const inch = 96

/** Page breaks as breaks of columns, in which pages are laid out on a screen. */
const asColumns = (css: string): string =>
  css.replaceAll(/(break-(?:before|after)):\s*page\b/g, '$1:column')

/** The page of the emergency fills what the text has room for; a screen is another height. */
const withoutScreen = (css: string): string => css.replaceAll('100vh', 'var(--area-height)')

/** A binder as one document: its parts, with links that stay inside. */
export function binderToPrint(manual: Manual, assets: RenderAssets, ink: Ink): ToPrint {
  const binder = renderBinder(manual, assets, ink)
  const style = `${withoutScreen(binder.style)}\n.begins-page{break-before:page!important}`
  const { width, height } = textArea(manual.facility.paper)
  const { words } = assets
  const work: PrintWork = {
    kind: 'binder',
    area: { width: width * inch, height: height * inch },
    sides: binder.sides,
    parts: binder.parts.map(({ body, pages, unnumbered, beginsRight, methods }) => ({
      body: body.replaceAll(`href="${elsewhere}`, 'href="#'),
      number: pages.number,
      unnumbered,
      beginsRight,
      hasOpenings: methods.length > 0,
    })),
  }
  const rules = wholePageRules({
    parts: binder.parts.map(({ pages }) => pages),
    blank: binder.blank,
  })
  // Its page has a wider margin, and columns are all as wide as the others.
  const narrow = `.contents{width:${Math.ceil((width + margins.outer - indexMargin) * inch)}px}`
  return {
    title: words.binder.subject,
    advice: [binder.sides === 2 ? words.printing.bothSides : words.printing.oneSide],
    work,
    hasMargins: true,
    look: '',
    css: { paper: `${rules}\n${style}`, laying: `${asColumns(style)}\n${narrow}` },
  }
}
