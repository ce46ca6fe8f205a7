import { readFile } from 'node:fs/promises'
import {
  getDocument,
  type PDFDocumentProxy,
  type PDFPageProxy,
} from 'pdfjs-dist/legacy/build/pdf.mjs'

/** Opens a PDF with another program than the one that made it. */
export const openBytes = (bytes: Uint8Array): Promise<PDFDocumentProxy> =>
  getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise

const opened = new Map<string, Promise<PDFDocumentProxy>>()

/** Opens a file once, however many tests look at it. */
export function openPdf(file: string): Promise<PDFDocumentProxy> {
  const known = opened.get(file) ?? readFile(file).then(openBytes)
  opened.set(file, known)
  return known
}

/** Words on a page with their places, points from its lower left. */
export type Word = {
  readonly text: string
  readonly x: number
  readonly y: number
  readonly right: number
  readonly transform: readonly number[]
}

export async function wordsOn(page: PDFPageProxy): Promise<readonly Word[]> {
  const { items } = await page.getTextContent()
  return items.flatMap((i) => {
    if (!('str' in i)) return []
    const [x, y] = [i.transform[4] as number, i.transform[5] as number]
    return [{ text: i.str, x, y, right: x + i.width, transform: i.transform as number[] }]
  })
}

const read = new WeakMap<PDFDocumentProxy, Promise<readonly (readonly Word[])[]>>()

/** Words of all pages, in the order of the pages. */
export function allWords(pdf: PDFDocumentProxy): Promise<readonly (readonly Word[])[]> {
  const known =
    read.get(pdf) ??
    Promise.all(
      Array.from({ length: pdf.numPages }, async (_, i) => wordsOn(await pdf.getPage(i + 1))),
    )
  read.set(pdf, known)
  return known
}

/** What stands on each page, in one line. */
export const pageTexts = async (pdf: PDFDocumentProxy): Promise<readonly string[]> =>
  (await allWords(pdf)).map((words) =>
    words
      .map((w) => w.text)
      .join(' ')
      .replace(/\s+/g, ' '),
  )
