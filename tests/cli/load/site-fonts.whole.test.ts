import { describe, expect, it } from 'vitest'
import { siteFonts } from '../../../src/cli/load/site-fonts.ts'
import { usedCharacters } from '../../../src/cli/load/used-characters.ts'
import { renderSite } from '../../../src/render/site/render-site.ts'
import { assetsFor, demoManual, demos } from '../../support/demo.ts'
import { fontCharacters } from '../../support/font-characters.ts'

const siteOf = async (id: (typeof demos)[number]): Promise<readonly string[]> => {
  const { manual, words } = await demoManual(id)
  return renderSite(manual, await assetsFor(words, 'linked')).map(({ data }) => data)
}

describe.each(demos)('fonts of the site of %s', (id) => {
  it('have every character that the site shows, in few bytes', async () => {
    const texts = await siteOf(id)
    const used = usedCharacters(texts)
    const { files, linked } = await siteFonts(texts)
    const missing = (name: string, characters: string): readonly string[] => {
      const file = files.find(({ path }) => path === `fonts/${name}`)
      if (!(file?.data instanceof Uint8Array)) return [name]
      const has = fontCharacters(file.data)
      return [...characters.replace(/\p{Cf}/gu, '')].filter((c) => !has.has(c.codePointAt(0) ?? 0))
    }
    expect(missing('formulas.woff2', used.formulas)).toEqual([])
    // An arrow of the Latin files of text is none of titles.
    expect(missing('titles.woff2', used.latin.replace('↑', ''))).toEqual([])
    expect(missing('signs.woff2', used.signs)).toEqual([])
    expect(used.letters).toBe('')
    for (const { path } of files)
      if (path.endsWith('.woff2')) expect(linked).toContain(`url(${path})`)
    const bytes = files.reduce((sum, { data }) => sum + data.length, 0)
    expect(bytes).toBeLessThan(120_000)
  })
})

describe('fonts of a site', () => {
  it('are the same bytes for the same characters', async () => {
    const texts = ['<p>→</p>', '<math><mi>x</mi></math>']
    const again = ['<math><mi>x</mi></math>', '<p>→ →</p>']
    expect((await siteFonts(texts)).files).toEqual((await siteFonts(again)).files)
  })

  it('leave out what no page needs, and keep whole files for letters of other languages', async () => {
    const names = async (text: string): Promise<readonly string[]> =>
      (await siteFonts([text])).files.map(({ path }) => path)
    expect(await names('<p>a</p>')).not.toContain('fonts/formulas.woff2')
    expect(await names('<p>a</p>')).not.toContain('fonts/signs.woff2')
    expect(await names('<p>ł</p>')).toContain('fonts/SourceSans3-Regular.ttf.woff2')
  })
})
