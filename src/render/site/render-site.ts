import type { Manual } from '../../model/manual.ts'
import { type RenderAssets, stylesOf } from '../assets.ts'
import { renderDrawings } from '../drawings/drawings.ts'
import { html } from '../text/html.ts'
import { createTemplates } from '../text/templates.ts'
import { createPen, type Pen } from '../views/pen.ts'
import { familyTemplate, pageWords, type SiteContext } from './page.ts'
import { home } from './pages/home.ts'
import { allPages, pageFamilies } from './pages.ts'

export type SiteFile = { readonly path: string; readonly data: string }

/** Links of pages at the top of the site, and of pages one folder down. */
const penFor = (manual: Manual, words: RenderAssets['words'], up: string): Pen => {
  const ids = new Set(manual.procedures.map((p) => p.id))
  return createPen(manual, words, 'screen', {
    worksheetHref: (id) => `${up}worksheets/${id}.html`,
    procedureHref: (id) => (ids.has(id) ? `${up}procedures/${id}.html` : undefined),
  })
}

/** A page as its templates are given it. */
type Page = {
  readonly path: string
  readonly template: string
  readonly title: string
  /** The page whose entry in the menu is marked; undefined on the first page. */
  readonly entry: string | undefined
  readonly data: () => object
}

/** Every page that this manual has. */
function pagesOf(manual: Manual, words: RenderAssets['words'], printed: boolean): readonly Page[] {
  const called = allPages.map((page) => ({
    page,
    own: pageWords(page).parse(words.pages[page.id]),
  }))
  const site: SiteContext = {
    manual,
    words,
    drawings: renderDrawings(manual, words),
    pen: penFor(manual, words, ''),
    printed,
    offered: called.flatMap(({ page: { id }, own: { link, about } }) =>
      link === undefined || about === undefined ? [] : [{ id, link, about }],
    ),
  }
  const below: SiteContext = { ...site, pen: penFor(manual, words, '../') }
  return [
    {
      path: home.path,
      template: home.template,
      title: manual.facility.name,
      entry: undefined,
      data: () => home.data(site),
    },
    ...called.map(({ page, own }) => ({
      path: `${page.id}.html`,
      template: `site/${page.id}`,
      title: own.title,
      entry: page.under ?? page.id,
      data: () => ({ ...page.data(site), page: own }),
    })),
    ...pageFamilies.flatMap((family) =>
      family.list(below).map(({ id, title, data }) => ({
        path: `${family.folder}/${id}.html`,
        template: familyTemplate(family),
        title,
        entry: family.under,
        data,
      })),
    ),
  ]
}

const menuOf = (words: RenderAssets['words'], entry: string | undefined) =>
  allPages.flatMap(({ id }) => {
    const title = words.pages[id]?.menu
    return title === undefined ? [] : [{ page: id, title, here: id === entry }]
  })

/**
 * All pages of the site and its style sheet, each made when it is asked for. Links are relative,
 * nothing is fetched from elsewhere, no script is needed.
 * @param printed Whether the field book lies beside the pages.
 */
export function sitePages(
  manual: Manual,
  assets: RenderAssets,
  printed = false,
): ReadonlyMap<string, () => string> {
  const { words } = assets
  const templates = createTemplates(assets.templates)
  const make = (page: Page) => (): string => {
    // Headings of shared parts stand one level below the page's own.
    const shared = {
      sub: 'h2',
      words,
      facility: manual.facility,
      date: manual.date,
      up: page.path.includes('/') ? '../' : '',
      title: page.title,
      material: words.materials[manual.facility.material],
    }
    const body = templates.render(page.template, { ...page.data(), ...shared, name: page.title })
    return templates.render('site/page', {
      ...shared,
      home: page.entry === undefined,
      menu: menuOf(words, page.entry),
      body: html(body),
    })
  }
  const css = `${assets.fontCss}\n${stylesOf(assets, 'shared', 'emergency', 'site')}`
  return new Map([
    ...pagesOf(manual, words, printed).map((page): [string, () => string] => [
      page.path,
      make(page),
    ]),
    ['assets/site.css', () => css],
  ])
}

/** The whole site at once. */
export const renderSite = (
  manual: Manual,
  assets: RenderAssets,
  printed = false,
): readonly SiteFile[] =>
  [...sitePages(manual, assets, printed)].map(([path, make]) => ({ path, data: make() }))
