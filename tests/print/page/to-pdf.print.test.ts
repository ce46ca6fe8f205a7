import { describe, expect, it } from 'vitest'
import { placesOf } from '../../../src/print/binder/places.ts'
import { toDraft, toPdf } from '../../../src/print/page/to-pdf.ts'
import { openDocument } from '../../../src/print/pdf/documents.ts'
import { contentOf, pagesOf } from '../../../src/print/pdf/pages.ts'
import { openBytes, wordsOn } from '../../support/read-pdf.ts'
import { usePress } from '../../support/test-press.ts'

const press = usePress()

const css = '@page{size:letter;margin:1in}h2{break-before:page}body{font-family:"Source Sans 3"}'
const drawing =
  '<figure class="drawing" role="group"><svg role="img" aria-label="A box" viewBox="0 0 200 100" width="200"><text x="10" y="50" font-size="12">drawn</text></svg></figure>'
const body = `<nav><a href="#later"></a></nav><h1>First</h1>${drawing}<h2 id="later">Later</h2>${drawing}`

const textsOf = async (bytes: Uint8Array): Promise<string[]> => {
  const pdf = await openBytes(bytes)
  const pages = [...Array(pdf.numPages).keys()].map((i) => pdf.getPage(i + 1))
  const words = await Promise.all(pages.map(async (page) => wordsOn(await page)))
  return words.map((all) => all.map((w) => w.text).join(' '))
}

describe('what is printed', () => {
  it('shows all that was hidden while it was laid out, drawings with their words', async () => {
    const bytes = await press().run({ css, body }, {}, (page) => toPdf(page))
    const texts = await textsOf(bytes)
    expect(texts).toHaveLength(2)
    for (const [i, title] of ['First', 'Later'].entries()) {
      expect(texts[i]).toContain(title)
      expect(texts[i]).toContain('drawn')
    }
  })

  it('is alike when it is printed again from the same page', async () => {
    const both = await press().run({ css, body }, { again: true }, async (page) => [
      await toPdf(page),
      await toPdf(page),
    ])
    const [first = [], second] = await Promise.all(both.map(textsOf))
    expect(second).toEqual(first)
  })

  it('says as a draft where everything stands, without any of it', async () => {
    const bytes = await press().run({ css, body }, { draft: true }, (page) => toDraft(page))
    const draft = openDocument(bytes)
    expect(placesOf(draft).get('later')).toBe(1)
    for (const page of pagesOf(draft)) expect(contentOf(draft, page)).not.toMatch(/T[jJ]$/m)
  })
})
