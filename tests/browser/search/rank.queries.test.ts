import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { rank } from '../../../src/browser/search/rank.ts'
import { siteContext } from '../../../src/render/site/render-site.ts'
import { searchIndex } from '../../../src/render/site/search/search-index.ts'
import { demoManual, testsFolder } from '../../support/demo.ts'

type Query = { readonly find: string; readonly page: readonly string[] }

const file = path.join(testsFolder, 'fixtures', 'search', 'queries.yaml')
const queries = parse(await readFile(file, 'utf8')) as Record<'known' | 'fresh', readonly Query[]>
const { manual, words } = await demoManual('larkmoor')
const index = searchIndex(siteContext(manual, words))

const firstThree = (query: string): readonly string[] =>
  rank(query, index)
    .slice(0, 3)
    .map(({ entry }) => index.entries[entry]?.[0].replace('.html', '') ?? '')

const missed = (list: readonly Query[]): readonly string[] =>
  list
    .filter(({ find, page }) => !firstThree(find).some((found) => page.includes(found)))
    .map(({ find }) => find)

describe('what people of the track type', () => {
  it('leads in the first three results to a page that answers', () => {
    expect(queries.known).toHaveLength(87)
    expect(missed(queries.known).length, missed(queries.known).join('; ')).toBeLessThanOrEqual(
      87 - 82,
    )
  })

  it('does so mostly for words that nobody thought of when synonyms were chosen', () => {
    expect(queries.fresh).toHaveLength(30)
    expect(missed(queries.fresh).length).toBeLessThanOrEqual(8)
  })

  it('names pages that exist, so that no query fails for a misspelt one', () => {
    const known = new Set(index.entries.map(([href]) => href.replace('.html', '')))
    const pages = new Set([...known].map((page) => page.replace(/#.*/, '')))
    const unknown = [...queries.known, ...queries.fresh]
      .flatMap(({ page }) => page)
      .filter((page) => !known.has(page) && !pages.has(page))
    expect(unknown).toEqual([])
  })
})

describe('a number of a worksheet', () => {
  it('leads to it and to nothing that has another', () => {
    for (const worksheet of manual.worksheets) {
      const [first] = firstThree(worksheet.number)
      expect(first).toBe(`worksheets/${worksheet.id}`)
    }
  })
})
