import { fileData } from '../../model/file-data.ts'
import { inScript } from '../../model/in-script.ts'
import type { Manual } from '../../model/manual.ts'
import type { SearchIndex } from '../../model/search.ts'
import type { Steps } from '../../model/steps.ts'
import { type SiteAssets, stylesOf } from '../assets.ts'
import { icon } from '../site/icon.ts'
import { today } from '../site/pages/today.ts'
import {
  type Inside,
  type InsidesAlone,
  insides,
  menuOf,
  siteContext,
} from '../site/render-site.ts'
import { searchIndex } from '../site/search/search-index.ts'
import { dayFile } from '../site/today-script.ts'
import { blamingLinks } from '../text/dead-link.ts'
import { html } from '../text/html.ts'
import { createTemplates } from '../text/templates.ts'
import { emergencyBar } from '../views/emergency-bar.ts'
import { drawnOnce, onePicture } from './drawn-once.ts'
import { inOneFile } from './in-one-file.ts'
import { firstPage, pageId, placeOf } from './place.ts'
import { formulasByStyle, shorterDrawings, withoutEnds } from './shorter.ts'
import { withoutMarks } from './without-marks.ts'

/** The whole manual as one page, before its fonts are known. */
export type OneFile = {
  /** Everything that is shown. */
  readonly body: string
  /** What its script reads, as JSON, by the id under which it stands in the file. */
  readonly data: readonly { readonly id: string; readonly json: string }[]
  /** The same for every facility, so that a page that shows the file can know it by its hash. */
  readonly script: string
  readonly css: string
  readonly title: string
  readonly lang: string
  /** What its pages were made of; most of them stand on the site as they are. */
  readonly insides: InsidesAlone
}

/** The page on which numbers of the day are put in. */
const dayPage = `${today.id}.html`

/** Results of the search lead inside the file. */
const indexInFile = (index: SearchIndex, pages: ReadonlySet<string>): SearchIndex => ({
  ...index,
  entries: index.entries.map(([href, ...rest]) => [placeOf(href, firstPage, pages), ...rest]),
})

/** No text in it may end the element that it stands in. */
const dataOf = (id: string, data: unknown) => ({
  id,
  json: inScript(data),
})

/**
 * All pages in one file, to be sent by message or mail, page by page. A link shows its page by style
 * alone, so that it works where a phone only shows what a file holds and runs no script; where scripts
 * run, there is a search too, and numbers of the day.
 */
export function* renderingOneFile(manual: Manual, assets: SiteAssets): Steps<OneFile> {
  const steps = inSteps(manual, assets)
  for (;;) {
    const step = blamingLinks(assets.templates, () => steps.next())
    if (step.done) return step.value
    yield
  }
}

function* inSteps(manual: Manual, assets: SiteAssets): Steps<OneFile> {
  const { words } = assets
  const site = siteContext(manual, words, { beside: false })
  const rendered: (Inside & { readonly path: string })[] = []
  for (const { path, inside } of insides(site, assets)) {
    rendered.push({ path, ...inside() })
    yield
  }
  const paths = new Set(rendered.map(({ path }) => path))
  // Marks on every page that follows numbers of the day would not fit into a message; the page
  // that shows what most people ask for has them.
  const shown = ({ path, body }: { readonly path: string; readonly body: string }): string =>
    formulasByStyle(
      inOneFile(onePicture(path === dayPage ? body : withoutMarks(body)), path, paths),
    )
  const pages: string[] = []
  for (const page of rendered) {
    pages.push(shown(page))
    yield
  }
  const drawn = drawnOnce(pages)
  yield
  const templates = createTemplates(assets.templates)
  const around = templates.render('one-file', {
    up: '',
    words,
    facility: manual.facility,
    date: manual.date,
    material: words.materials[manual.facility.material],
    bar: emergencyBar(site.pen),
    menu: menuOf(words, undefined),
    pages: rendered.map(({ path, isLong }, i) => ({
      id: pageId(path),
      isLong,
      text: html(drawn.pages[i] ?? ''),
    })),
    drawings: html(drawn.drawings),
  })
  yield
  const { text, css } = shorterDrawings(inFrame(around, paths))
  yield
  return {
    body: withoutEnds(text),
    data: [
      dataOf(fileData.index, indexInFile(searchIndex(site), paths)),
      dataOf(fileData.day, dayFile(site)),
    ],
    script: assets.scripts.oneFile,
    css: `${stylesOf(assets, 'shared', 'emergency', 'site', 'one-file')}\n${css}`,
    title: `${words.binder.subject} · ${manual.facility.name}`,
    lang: manual.facility.lang,
    insides: new Map(rendered.map((page) => [page.path, page])),
  }
}

/** Links of the bar and the menu, which stand around all pages; those of the pages lead already. */
const inFrame = (text: string, pages: ReadonlySet<string>): string =>
  text.replace(
    /(\shref=")([a-z/-]+\.html)(?=")/g,
    (_, leading: string, href: string) => leading + placeOf(href, firstPage, pages),
  )

/**
 * The file itself. Its policy lets nothing be fetched and no other style or script be used than
 * those that it was made with.
 * @param fontCss Rules with the fonts inside.
 * @param hash SHA-256 in Base64, by which a policy names a style or script.
 */
export function oneFilePage(
  { body, data, script, css, title, lang }: OneFile,
  { templates }: Pick<SiteAssets, 'templates'>,
  { fontCss, hash }: { readonly fontCss: string; readonly hash: (text: string) => string },
): string {
  const style = `${fontCss}\n${css}`
  const allowed = (text: string): string => `'sha256-${hash(text)}'`
  const policy = [
    "default-src 'none'",
    `style-src ${allowed(style)}`,
    `script-src ${allowed(script)}`,
    'font-src data:',
    'img-src data:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ')
  return createTemplates(templates).render('one-file-page', {
    lang,
    title,
    policy: html(policy),
    icon: `data:image/svg+xml,${icon.trim().replaceAll('#', '%23').replaceAll('"', "'")}`,
    style: html(style),
    body: html(body),
    data: data.map(({ id, json }) => ({ id, json: html(json) })),
    script: html(script),
  })
}
