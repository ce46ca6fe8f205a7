import { rm } from 'node:fs/promises'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Folders, loadManual } from '../../src/cli/load/load-manual.ts'
import type { Manual } from '../../src/model/manual.ts'
import { renderBinder } from '../../src/render/binder/render-binder.ts'
import { renderCards } from '../../src/render/cards/render-cards.ts'
import { renderForms } from '../../src/render/forms/render-forms.ts'
import { renderSheets } from '../../src/render/sheets/render-sheets.ts'
import { renderSite } from '../../src/render/site/render-site.ts'
import type { Words } from '../../src/validate/schemas/words.ts'
import { assetsFor, date, demos } from '../support/demo.ts'
import { englishLetter, nonsenseFacility, withNonsense } from '../support/nonsense-language.ts'
import { visibleText } from '../support/visible-text.ts'

let folders: Folders
beforeAll(async () => {
  folders = await withNonsense()
})
afterAll(() => rm(path.dirname(folders.content), { recursive: true, force: true }))

/** Symbols of units and of names that every language writes alike. */
const symbols = new Set(
  'in min rad gal mi yd kPa psi dBA lb ac ft mph oz fl cm mm km kg ha kN lbf CA USD CFR No NIOSH OSHA QR pdf yaml csv ics geojson gpx'.split(
    ' ',
  ),
)

/** What no language says in its own words: titles of publications, and names of files. */
function withoutNames(manual: Manual, text: string): string {
  const cited = manual.sources.flatMap((s) => [s.text, s.short]).sort((a, b) => b.length - a.length)
  return cited
    .reduce((left, name) => left.replaceAll(name, ' '), text)
    .replace(/[\w-]+\.(?:yaml|csv|ics|geojson|gpx|pdf|html)\b(?::\d+)?/g, ' ')
    .replace(/https?:\S+/g, ' ')
}

const englishWords = (text: string): readonly string[] =>
  (text.match(/\p{L}{2,}/gu) ?? []).filter(
    (word) => /^[a-zA-Z]+$/.test(word) && englishLetter.test(word) && !symbols.has(word),
  )

/** English words of a page, each with where it stands. */
const englishIn = (manual: Manual, page: string, html: string): readonly string[] =>
  visibleText(html)
    // Most texts have none, with names or without.
    .filter((text) => englishWords(text).length > 0)
    .flatMap((text) =>
      englishWords(withoutNames(manual, text)).map(
        (word) => `${page}: "${word}" in "${text.slice(0, 80)}"`,
      ),
    )

describe.each(demos)('the manual of %s in a language that nobody speaks', (id) => {
  let manual: Manual
  let words: Words

  beforeAll(async () => {
    const loaded = await loadManual(await nonsenseFacility(id, folders), folders, date)
    expect(loaded.problems).toEqual([])
    if (!loaded.manual || !loaded.library) throw new Error('no manual')
    manual = loaded.manual
    words = loaded.library.words
  })

  it('has on no page of the site an English word', async () => {
    const pages = renderSite(manual, await assetsFor(words, 'linked'))
    expect(pages.length).toBeGreaterThan(100)
    expect(
      pages
        .filter((p) => p.path.endsWith('.html'))
        .flatMap((p) => englishIn(manual, p.path, p.data)),
    ).toEqual([])
  })

  it('has on no page of paper an English word', async () => {
    const assets = await assetsFor(words, 'inline')
    const pages: readonly (readonly [string, string])[] = [
      ...renderBinder(manual, assets).parts.map((p) => [p.id, p.body] as const),
      ...renderSheets(manual, assets)
        .sheets.map((sheet) => sheet())
        .flatMap((s) =>
          [...s.pages, ...s.drawings.map((d) => d.body)].map(
            (body) => [`sheet ${s.id}`, body] as const,
          ),
        ),
      ['forms', renderForms(manual, assets).body],
      ['cards', renderCards(manual, assets).body],
    ]
    expect(pages.length).toBeGreaterThan(50)
    expect(pages.flatMap(([name, body]) => englishIn(manual, name, body))).toEqual([])
  })
})
