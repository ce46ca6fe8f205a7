import { type PDFDocument, PDFDocument as Pdf, PDFHexString, PDFName } from '@cantoo/pdf-lib'
import type { Browser, Page } from 'puppeteer'
import { finishPdf, type PdfAbout } from '../finish/finish-pdf.ts'
import { openPage } from '../page/open-page.ts'

export type FormsPrint = { readonly bytes: Uint8Array; readonly pages: number }

type Box = { readonly name: string; readonly tip: string; readonly lines: number; readonly page: number; readonly x: number; readonly y: number; readonly width: number; readonly height: number }

/** Where each place to write stands on its page, in CSS pixels from the page's top left; throws where a form runs off its page. */
function boxesInPage(): Box[] {
  return [...document.querySelectorAll('.form')].flatMap((form, page) => {
    const paper = form.getBoundingClientRect()
    const body = form.querySelector('.form-body')
    if (body && body.scrollHeight > body.clientHeight + 1) throw new Error(`${form.id} does not fit on its page`)
    return [...form.querySelectorAll('[data-field]')].map((e) => {
      const r = e.getBoundingClientRect()
      return { name: e.dataset['field'] ?? '', tip: e.dataset['tip'] ?? '', lines: Number(e.dataset['lines'] ?? 1), page, x: r.left - paper.left, y: r.top - paper.top, width: r.width, height: r.height }
    })
  })
}

/** CSS pixels are 1/96 in, points 1/72 in. */
const points = (px: number): number => (px * 72) / 96

/** A little air, so that the field's frame does not cover the printed line. */
const inset = 1.5

const typeSize = 10

function addFields(printed: PDFDocument, boxes: readonly Box[]): void {
  const form = printed.getForm()
  for (const box of boxes) {
    const page = printed.getPage(box.page)
    const field = form.createTextField(box.name)
    if (box.lines > 1) field.enableMultiline()
    field.addToPage(page, { x: points(box.x) + inset, y: page.getHeight() - points(box.y + box.height) + inset, width: points(box.width) - 2 * inset, height: points(box.height) - 2 * inset, borderWidth: 0 })
    field.setFontSize(typeSize)
    // The tooltip belongs to the field; readers that look at the widget alone find it there too.
    for (const dict of [field.acroField.dict, ...field.acroField.getWidgets().map((w) => w.dict)]) dict.set(PDFName.of('TU'), PDFHexString.fromText(box.tip))
  }
  // Fields are walked in rows, as they are read.
  for (const page of printed.getPages()) page.node.set(PDFName.of('Tabs'), PDFName.of('R'))
}

/** Prints all forms, one page each, and lays a text field with name and tooltip over every place to write. */
export async function printForms(browser: Browser, html: string, about: PdfAbout): Promise<FormsPrint> {
  const page: Page = await openPage(browser, html)
  try {
    const boxes = await page.evaluate(boxesInPage)
    const bytes = await page.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true, outline: true, timeout: 120_000 })
    const printed = await Pdf.load(bytes, { updateMetadata: false })
    const pages = 1 + Math.max(...boxes.map((b) => b.page))
    if (printed.getPageCount() !== pages) throw new Error(`${printed.getPageCount()} pages instead of ${pages} forms`)
    addFields(printed, boxes)
    return { bytes: await finishPdf(printed, about), pages }
  } finally {
    await page.close()
  }
}
