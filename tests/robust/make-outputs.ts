import { composeFiguresFile } from '../../src/compose/figures-file.ts'
import type { Manual } from '../../src/model/manual.ts'
import { atOnce } from '../../src/model/steps.ts'
import type { RenderAssets, SiteAssets } from '../../src/render/assets.ts'
import { renderBinder } from '../../src/render/binder/render-binder.ts'
import { renderDividers } from '../../src/render/binder/render-dividers.ts'
import { renderCards } from '../../src/render/cards/render-cards.ts'
import { renderFieldBook, renderHandout } from '../../src/render/field-book/render-field-book.ts'
import { renderForms } from '../../src/render/forms/render-forms.ts'
import { oneFilePage, renderingOneFile } from '../../src/render/one-file/one-file.ts'
import { renderSheets } from '../../src/render/sheets/render-sheets.ts'
import { sitePages } from '../../src/render/site/render-site.ts'
import type { Chance } from './chance.ts'
import type { Output } from './judge/outputs.ts'

type Printed = { readonly css: string; readonly body: string }

const document = (name: string, { css, body }: Printed): readonly Output[] => [
  { path: `${name}.css`, text: css },
  { path: `${name}.html`, text: body },
]

/** What is made for paper, each kind when it is asked for. */
const forPaper: Readonly<
  Record<string, (manual: Manual, assets: RenderAssets) => readonly Output[]>
> = {
  binder: (manual, assets) =>
    renderBinder(manual, assets).parts.flatMap(({ id, css, body }) => [
      ...document(`binder-${id}`, { css: css.left, body }),
      { path: `binder-${id}-right.css`, text: css.right },
    ]),
  dividers: (manual, assets) => document('dividers', renderDividers(manual, assets)),
  sheets: (manual, assets) => {
    const { papers, sheets: all } = renderSheets(manual, assets)
    const sheets = all.map((sheet) => sheet())
    return [
      ...papers.map(({ name, css }) => ({ path: `sheets-${name}.css`, text: css })),
      ...sheets.flatMap(({ id, pages, drawings }) => [
        ...pages.map((text, i) => ({ path: `sheets/${id}-${i}.html`, text })),
        ...drawings.map(({ size, body }) => ({
          path: `sheets/${id}-drawing-${size}.html`,
          text: body,
        })),
      ]),
    ]
  },
  forms: (manual, assets) => document('forms', renderForms(manual, assets)),
  cards: (manual, assets) => document('cards', renderCards(manual, assets)),
  'field-book': (manual, assets) => document('field-book', renderFieldBook(manual, assets)),
  handout: (manual, assets) => document('handout', renderHandout(manual, assets)),
}

function inOneFile(manual: Manual, assets: SiteAssets): readonly Output[] {
  const made = atOnce(renderingOneFile(manual, assets))
  const page = oneFilePage(made, assets, { fontCss: '', hash: () => '' })
  const scripts = page.match(/<script\b/g)?.length
  return [
    { path: 'manual.html', text: scripts === made.data.length + 1 ? page : '<zq-scripts>' },
    { path: 'manual.css', text: made.css },
    ...made.data.map(({ json }, i) => ({ path: `manual-${i}.json`, text: json })),
  ]
}

/** How many pages of a site a run looks at; a small manual has about sixty. */
const pagesLookedAt = 12

/** Some pages of a site, and all that is no page. */
function ofSite(manual: Manual, assets: SiteAssets, chance: Chance): readonly Output[] {
  const made = [...sitePages(manual, assets)]
  const often = pagesLookedAt / made.length
  const data =
    /\.(?:csv|ics|webmanifest|svg)$|assets\/(?:search-index|records-data|day-numbers)\.js$/
  return made
    .filter(([path]) => data.test(path) || (path.endsWith('.html') && chance.happens(often)))
    .map(([path, make]) => ({ path, text: make() }))
}

/**
 * Texts that are made of a manual: its figures, and in one run this, in another that, so that many
 * runs together look at all.
 */
export function someOutputs(manual: Manual, assets: SiteAssets, chance: Chance): readonly Output[] {
  const figures = { path: 'figures.json', text: JSON.stringify(composeFiguresFile(manual)) }
  if (chance.happens(0.5)) return [figures, ...ofSite(manual, assets, chance)]
  if (chance.happens(0.05)) return [figures, ...inOneFile(manual, assets)]
  return [figures, ...chance.oneOf(Object.values(forPaper))(manual, assets)]
}

/** All texts that are made of a manual. */
export const allOutputs = (manual: Manual, assets: SiteAssets): readonly Output[] => [
  ...[...sitePages(manual, assets)]
    .filter(([path]) => path.endsWith('.html'))
    .map(([path, make]) => ({ path, text: make() })),
  ...Object.values(forPaper).flatMap((make) => make(manual, assets)),
  ...inOneFile(manual, assets),
]
