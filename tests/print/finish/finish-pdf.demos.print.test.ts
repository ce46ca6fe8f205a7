import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { openDocument } from '../../../src/print/pdf/documents.ts'
import { brokenRules } from '../../support/pdf-rules/broken-rules.ts'
import { printedDemo, printedDemos } from '../../support/printed-demos.ts'
import { allWords, openPdf } from '../../support/read-pdf.ts'
import { overlaps, textBoxes } from '../../support/text-boxes.ts'

describe.each(printedDemos)('PDFs of %s', (id) => {
  let folder: string

  beforeAll(async () => {
    ;({ folder } = await printedDemo(id))
  })

  it.each(['binder', 'forms', 'cards', 'sheets/sheets', 'sheets/sheets-black', 'sheets/seal'])(
    'keep the rules of sound PDFs: %s',
    async (name) => {
      const bytes = await readFile(path.join(folder, `${name}.pdf`))
      expect(brokenRules(await openDocument(bytes))).toEqual([])
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
