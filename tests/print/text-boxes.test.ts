import { PDFDocument, StandardFonts } from '@cantoo/pdf-lib'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { describe, expect, it } from 'vitest'
import { overlaps, textBoxes } from '../support/text-boxes.ts'

/** Two words of 12 points on a page, the second this far from the first. */
async function found(right: number, down: number): Promise<readonly string[]> {
  const made = await PDFDocument.create()
  const font = await made.embedFont(StandardFonts.Helvetica)
  const page = made.addPage([200, 200])
  page.drawText('harrow', { x: 20, y: 100, size: 12, font })
  page.drawText('water', { x: 20 + right, y: 100 - down, size: 12, font })
  const pdf = await getDocument({ data: await made.save(), verbosity: 0 }).promise
  return overlaps(await textBoxes(await pdf.getPage(1)))
}

describe('words that lie on each other', () => {
  it('are found where they share letters’ height and width', async () => {
    expect(await found(15, 2)).toEqual(['“harrow” and “water”'])
  })

  it('are not seen in lines below or beside each other', async () => {
    expect(await found(0, 12)).toEqual([])
    expect(await found(60, 0)).toEqual([])
  })
})
