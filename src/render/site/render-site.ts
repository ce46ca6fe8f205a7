import type { SavedWords } from '../../model/kept-site.ts'
import type { Manual } from '../../model/manual.ts'
import { fill } from '../../model/pattern.ts'
import { type RenderAssets, type SiteAssets, siteScripts, stylesOf } from '../assets.ts'
import { calendarFile, calendarPath } from '../calendars/calendar-file.ts'
import { renderDrawings } from '../drawings/drawings.ts'
import { csvText } from '../tables/csv.ts'
import { dataTables, tablePath } from '../tables/tables.ts'
import { html } from '../text/html.ts'
import { shorterFormulas } from '../text/shorter-formulas.ts'
import { createTemplates } from '../text/templates.ts'
import { emergencyBar } from '../views/emergency-bar.ts'
import { createPen, type Pen } from '../views/pen.ts'
import { icon } from './icon.ts'
import { manifest } from './manifest.ts'
import { familyTemplate, pageWords, type SiteContext } from './page.ts'
import { home } from './pages/home.ts'
import { allPages, pageFamilies } from './pages.ts'
import type { PrintedFiles } from './papers.ts'
import { recordsScript } from './records/records-script.ts'
import { indexScript } from './search/search-index.ts'
import { dayKey, dayScript } from './today-script.ts'

export type SiteFile = { readonly path: string; readonly data: string }

/** The style of all pages. */
export const styleFile = 'assets/site.css'

/**
 * What a page may load and do: its own files and nothing of any other host. Styles and scripts
 * stand in files, so that words of a facility can never become either. It stands in every page that
 * a phone keeps, so it is short.
 */
export const policy = ["default-src 'self'", "base-uri 'none'", "form-action 'self'"].join('; ')

/**
 * Links of pages at the top of the site, and of pages one folder down; what follows numbers of the
 * day is marked.
 */
const penFor = (manual: Manual, words: RenderAssets['words'], up: string): Pen => {
  const ids = new Set(manual.procedures.map((p) => p.id))
  return createPen(manual, words, 'screen', {
    live: new Set(manual.today.follows),
    worksheetHref: (id) => `${up}worksheets/${id}.html`,
    procedureHref: (id) => (ids.has(id) ? `${up}procedures/${id}.html` : undefined),
  })
}

/** A page as its templates are given it. */
type Page = {
  readonly path: string
  readonly template: string
  readonly title: string
  readonly called?: string | undefined
  /** The page whose entry in the menu is marked; undefined on the first page. */
  readonly entry: string | undefined
  /** It offers to put in numbers of the day. */
  readonly offersDay: boolean
  readonly data: () => object
}

const calledPages = (words: RenderAssets['words']) =>
  allPages.map((page) => ({ page, own: pageWords(page).parse(words.pages[page.id]) }))

/** Stands for calendars and tables among the files that pages ask for. */
const takenAlong = 'calendars and tables'

/**
 * What the pages at the top of the site are made from.
 * @param beside Whether other files lie beside them.
 */
export function siteContext(
  manual: Manual,
  words: RenderAssets['words'],
  {
    printed = new Map(),
    beside = true,
  }: { readonly printed?: PrintedFiles; readonly beside?: boolean } = {},
): SiteContext {
  const asked = new Set<string>()
  const offered = calledPages(words).flatMap(
    ({ page: { id, door }, own: { link, menu, about } }) => {
      const called = link ?? menu
      return called === undefined || about === undefined ? [] : [{ id, link: called, about, door }]
    },
  )
  return {
    manual,
    words,
    drawings: renderDrawings(manual, words),
    pen: penFor(manual, words, ''),
    asked,
    beside: () => {
      asked.add(takenAlong)
      return beside
    },
    printed: {
      get: (file) => {
        asked.add(file)
        return printed.get(file)
      },
    },
    doors: offered.filter((page) => page.door),
    offered: offered.filter((page) => !page.door),
  }
}

/** Whether a page shows something that follows the numbers of a day. */
const isLive = (body: string): boolean => / data-(?:q|reckoner)=/.test(body)

/** Every page that this manual has. */
function pagesOf(site: SiteContext): readonly Page[] {
  const { manual, words } = site
  const below: SiteContext = {
    ...site,
    pen: penFor(manual, words, '../'),
  }
  return [
    {
      path: home.path,
      template: home.template,
      title: words.binder.subject,
      entry: undefined,
      offersDay: false,
      data: () => home.data(site),
    },
    ...calledPages(words).map(({ page, own }) => ({
      path: `${page.id}.html`,
      template: `site/${page.id}`,
      title: own.title,
      entry: page.under ?? page.id,
      offersDay: page.offersDay ?? false,
      data: () => ({ ...page.data(site), page: own }),
    })),
    ...pageFamilies.flatMap((family) =>
      family.list(below).map(({ id, title, called, data }) => ({
        path: `${family.folder}/${id}.html`,
        template: familyTemplate(family),
        title,
        called,
        entry: family.under,
        offersDay: family.offersDay ?? false,
        data,
      })),
    ),
  ]
}

export const menuOf = (words: RenderAssets['words'], entry: string | undefined) =>
  allPages.flatMap(({ id }) => {
    const title = words.pages[id]?.menu
    return title === undefined ? [] : [{ page: id, title, here: id === entry }]
  })

/** What the templates of all pages are given. */
const sharedData = ({ manual, words }: SiteContext, { path, title }: Page) => ({
  // Headings of shared parts stand one level below the page's own.
  sub: 'h2',
  words,
  facility: manual.facility,
  date: manual.date,
  up: path.includes('/') ? '../' : '',
  title,
  material: words.materials[manual.facility.material],
})

/** Words of the script of all pages, before it. */
function savedScript({ manual: { facility, date }, words }: SiteContext): string {
  const saved: SavedWords = {
    saved: fill(words.site.saved, { revision: facility.revision, date }),
    newer: words.site.newer,
    show: words.site.show,
  }
  return `var savedWords=${JSON.stringify(saved)};\n`
}

/** The inside of a page: what tells it from every other. */
export type Inside = {
  readonly body: string
  /** It has a list of its places. */
  readonly isLong: boolean
  /** Given to what stands around it too. */
  readonly shared: ReturnType<typeof sharedData>
  /** The files beside the pages that it was made with or without. */
  readonly asked: ReadonlySet<string>
}

/** Insides of pages by their paths, made where no file lies beside them. */
export type InsidesAlone = ReadonlyMap<string, Inside>

/** Every page, its inside made when it is asked for. */
export function insides(
  site: SiteContext,
  assets: Pick<SiteAssets, 'templates'>,
): readonly (Page & { readonly inside: () => Inside })[] {
  const templates = createTemplates(assets.templates)
  return pagesOf(site).map((page) => ({
    ...page,
    inside: () => {
      const shared = sharedData(site, page)
      site.asked.clear()
      const data = { jumps: [], ...page.data() }
      const body = templates.render(page.template, { ...data, ...shared, name: page.title })
      return {
        body: shorterFormulas(body),
        isLong: data.jumps.length > 0,
        shared,
        asked: new Set(site.asked),
      }
    },
  }))
}

/**
 * All pages of the site and its style sheet, each made when it is asked for. Links are relative,
 * nothing is fetched from elsewhere, and scripts only add to what is there.
 * @param printed The printed files that lie beside the pages.
 * @param made Insides that are taken as they are where nothing that they asked for is there now.
 */
export function sitePages(
  manual: Manual,
  assets: SiteAssets,
  printed: PrintedFiles = new Map(),
  made: InsidesAlone = new Map(),
): ReadonlyMap<string, () => string> {
  const { words } = assets
  const site = siteContext(manual, words, { printed })
  const bar = emergencyBar(site.pen)
  const templates = createTemplates(assets.templates)
  const alone = (path: string): Inside | undefined => {
    const inside = made.get(path)
    const isSame = [...(inside?.asked ?? [])].every((f) => f !== takenAlong && !printed.has(f))
    return isSame ? inside : undefined
  }
  const pages = insides(site, assets).map(({ path, title, called, entry, offersDay, inside }) => {
    const make = (): string => {
      const { body, isLong, shared } = alone(path) ?? inside()
      return templates.render('site/page', {
        ...shared,
        policy: html(policy),
        bar,
        called: called ?? title,
        keeps: assets.keeps,
        jumps: isLong,
        // The page of the day has its own places for them.
        day: path !== 'today.html' &&
          isLive(body) && { key: dayKey(site), offers: offersDay, up: shared.up },
        menu: menuOf(words, entry),
        body: html(body),
      })
    }
    return [path, make] as const
  })
  const css = `${assets.fontCss}\n${stylesOf(assets, 'shared', 'emergency', 'site')}`
  return new Map([
    ...pages,
    [styleFile, () => css],
    ...siteScripts.map((name): [string, () => string] => [
      `assets/${name}.js`,
      () => `${name === 'page' ? savedScript(site) : ''}${assets.scripts[name]}`,
    ]),
    ['assets/search-index.js', () => indexScript(site)],
    ['assets/records-data.js', () => recordsScript(site)],
    ['assets/day-numbers.js', () => dayScript(site)],
    ['assets/icon.svg', () => icon],
    ['manifest.webmanifest', () => manifest(manual, words)],
    ...manual.calendars.map((calendar): [string, () => string] => [
      calendarPath(calendar),
      () => calendarFile(calendar, manual),
    ]),
    ...dataTables(manual, words).map((table): [string, () => string] => [
      tablePath(table),
      () => csvText(table),
    ]),
  ])
}

/** The whole site at once. */
export const renderSite = (
  manual: Manual,
  assets: SiteAssets,
  printed: PrintedFiles = new Map(),
  made: InsidesAlone = new Map(),
): readonly SiteFile[] =>
  [...sitePages(manual, assets, printed, made)].map(([path, make]) => ({ path, data: make() }))
