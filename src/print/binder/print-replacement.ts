import { PDFDocument, type PDFRef } from '@cantoo/pdf-lib'
import { renderBlankPages } from '../../render/binder/blank-pages.ts'
import type { Binder } from '../../render/binder/render-binder.ts'
import { finishPdf, type PdfAbout } from '../finish/finish-pdf.ts'
import { dropLinks } from '../merge/join-links.ts'
import { createMerger } from '../merge/merge-documents.ts'
import type { Copy, Press } from '../press/press.ts'
import { toPdf } from '../press/to-pdf.ts'
import type { BinderPrint } from './print-binder.ts'
import { printPages } from './print-part.ts'
import type { Leaf } from './replacement.ts'

/** How a leaf is called in a list: by the numbers on its pages. */
export const leafName = (leaf: Leaf): string => leaf.labels.filter((l) => l !== '').join(' / ')

/**
 * The list and, behind it, every leaf that is new or changed, printed as it stands in the binder;
 * the list begins on a leaf of its own.
 */
export async function printReplacement(
  press: Press,
  binder: Binder,
  printed: BinderPrint,
  putIn: readonly Leaf[],
  list: Copy,
  about: PdfAbout,
): Promise<Uint8Array> {
  const merger = await createMerger()
  const wanted = putIn.flatMap((leaf) => leaf.pages.flatMap((p) => printed.laid[p] ?? []))
  const own = new Map<string, PDFRef>()
  for (const [i, part] of binder.parts.entries()) {
    const pages = wanted.flatMap((w) => (w.part === i && w.page !== undefined ? [w.page] : []))
    const as = printed.parts[i]
    if (pages.length === 0 || !as) continue
    const refs = merger.add(await printPages(press, part, as, pages))
    pages.forEach((page, j) => own.set(`${i}/${page}`, refs[j] as PDFRef))
  }
  const blanks = wanted.filter((w) => w.page === undefined)
  const add = async (copy: Copy): Promise<readonly PDFRef[]> =>
    merger.add(
      await PDFDocument.load(await press.run(copy, {}, (page) => toPdf(page, { tagged: true })), {
        updateMetadata: false,
      }),
    )
  const partPages = (i: number) =>
    (binder.parts[i] ?? (binder.parts[0] as Binder['parts'][number])).pages
  const filler = { part: partPages(0), label: '', words: binder.blank }
  const empty = [
    ...(await add(
      renderBlankPages([
        ...blanks.map((b) => ({ part: partPages(b.part), label: b.label, words: binder.blank })),
        filler,
      ]),
    )),
  ]
  const head = await add(list)
  const back = empty.pop() as PDFRef
  const leaves = wanted.map((w) => own.get(`${w.part}/${w.page}`) ?? (empty.shift() as PDFRef))
  const document = merger.finish([
    ...head,
    ...(binder.sides === 2 && head.length % 2 === 1 ? [back] : []),
    ...leaves,
  ])
  dropLinks(document)
  return finishPdf(document, about)
}
