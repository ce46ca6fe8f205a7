import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { dictionaryAt, nameAt } from '../../../src/print/pdf/dictionaries.ts'
import { openDocument } from '../../../src/print/pdf/documents.ts'
import { brokenRules } from '../../support/pdf-rules/broken-rules.ts'
import { fontsOf } from '../../support/pdf-rules/fonts.ts'
import { printedDemo, printedDemos } from '../../support/printed-demos.ts'
import { allWords, openPdf } from '../../support/read-pdf.ts'
import { overlaps, textBoxes } from '../../support/text-boxes.ts'

/** Names of our families in a document, behind the letters of a subset. */
const ours = /^[A-Z]{6}\+(?:SourceSans3|BarlowCondensed|STIXTwoMath)/

describe.each(printedDemos)('PDFs of %s', (id) => {
  let folder: string

  beforeAll(async () => {
    ;({ folder } = await printedDemo(id))
  })

  it.each([
    'binder',
    'forms',
    'cards',
    'field-book',
    'handout',
    'sheets/sheets',
    'sheets/sheets-black',
    'sheets/seal',
  ])('keep the rules of sound PDFs: %s', async (name) => {
    const bytes = await readFile(path.join(folder, `${name}.pdf`))
    expect(brokenRules(openDocument(bytes))).toEqual([])
  })

  it.each(['binder', 'forms', 'cards', 'field-book', 'sheets/sheets', 'sheets/sheets-black'])(
    'carry no fonts but ours: %s',
    async (name) => {
      const document = openDocument(await readFile(path.join(folder, `${name}.pdf`)))
      const names = fontsOf(document).map(
        ({ font }) =>
          nameAt(font, 'BaseFont') ??
          nameAt(dictionaryAt(font, 'FontDescriptor'), 'FontName') ??
          '?',
      )
      expect(names.length).toBeGreaterThan(2)
      expect(names.filter((n) => !ours.test(n))).toEqual([])
    },
  )

  it.each(['binder', 'forms', 'cards', 'sheets/sheets'])(
    'show no words on others, and none beyond the edge of the paper: %s',
    async (name) => {
      const pdf = await openPdf(path.join(folder, `${name}.pdf`))
      for (const [i, words] of (await allWords(pdf)).entries()) {
        const { width, height } = (await pdf.getPage(i + 1)).getViewport({ scale: 1 })
        const boxes = textBoxes(words)
        const beyond = boxes.filter(
          (b) => b.left < 0 || b.right > width || b.low < 0 || b.high > height,
        )
        expect(overlaps(boxes), `page ${i + 1}`).toEqual([])
        expect(
          beyond.map((b) => b.text),
          `page ${i + 1}`,
        ).toEqual([])
      }
    },
  )
})
