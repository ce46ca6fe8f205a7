import {
  type PDFDocument,
  type PDFField,
  type PDFForm,
  PDFHexString,
  PDFName,
  type PDFPage,
  PDFDocument as Pdf,
} from '@cantoo/pdf-lib'
import type { Page } from 'puppeteer'
import { finishPdf, type PdfAbout } from '../finish/finish-pdf.ts'
import type { Copy, Press } from '../press/press.ts'
import { toPdf } from '../press/to-pdf.ts'

export type FormsPrint = { readonly bytes: Uint8Array; readonly pages: number }

type Box = {
  readonly name: string
  readonly tip: string
  readonly kind: string
  readonly lines: number
  readonly page: number
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/**
 * Where each place to write stands on its page, in CSS pixels from the page's top left; throws
 * where a form runs off its page.
 */
function boxesInPage(): Box[] {
  return [...document.querySelectorAll('.form')].flatMap((form, page) => {
    const paper = form.getBoundingClientRect()
    const body = form.querySelector('.form-body')
    if (body && body.scrollHeight > body.clientHeight + 1)
      throw new Error(`${form.id} does not fit on its page`)
    return [...form.querySelectorAll('[data-field]')].map((e) => {
      const r = e.getBoundingClientRect()
      return {
        name: e.dataset['field'] ?? '',
        tip: e.dataset['tip'] ?? '',
        kind: e.dataset['kind'] ?? 'text',
        lines: Number(e.dataset['lines'] ?? 1),
        page,
        x: r.left - paper.left,
        y: r.top - paper.top,
        width: r.width,
        height: r.height,
      }
    })
  })
}

/** CSS pixels are 1/96 in, points 1/72 in. */
const points = (px: number): number => (px * 72) / 96

/** A little air, so that the field's frame does not cover the printed line. */
const inset = 1.5

const typeSize = 10

type Place = {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
  readonly borderWidth: number
}

function addCheck(form: PDFForm, name: string, page: PDFPage, at: Place): PDFField {
  const field = form.createCheckBox(name)
  field.addToPage(page, at)
  return field
}

function addText(form: PDFForm, box: Box, page: PDFPage, at: Place): PDFField {
  const field = form.createTextField(box.name)
  if (box.lines > 1) field.enableMultiline()
  field.addToPage(page, at)
  field.setFontSize(typeSize)
  return field
}

function addFields(printed: PDFDocument, boxes: readonly Box[]): void {
  const form = printed.getForm()
  for (const box of boxes) {
    const page = printed.getPage(box.page)
    const at = {
      x: points(box.x) + inset,
      y: page.getHeight() - points(box.y + box.height) + inset,
      width: points(box.width) - 2 * inset,
      height: points(box.height) - 2 * inset,
      borderWidth: 0,
    }
    const field =
      box.kind === 'check' ? addCheck(form, box.name, page, at) : addText(form, box, page, at)
    // The tooltip belongs to the field; readers that look at the widget alone find it there too.
    for (const dict of [field.acroField.dict, ...field.acroField.getWidgets().map((w) => w.dict)])
      dict.set(PDFName.of('TU'), PDFHexString.fromText(box.tip))
  }
}

async function printPages(page: Page): Promise<{ bytes: Uint8Array; boxes: Box[]; pages: number }> {
  const boxes = await page.evaluate(boxesInPage)
  return {
    boxes,
    bytes: await toPdf(page, { tagged: true }),
    pages: await page.evaluate(() => document.querySelectorAll('.form').length),
  }
}

/**
 * Prints all forms and lays a field with name and tooltip over every place to write.
 * @throws Error when a form runs off its page.
 */
export async function printForms(press: Press, forms: Copy, about: PdfAbout): Promise<FormsPrint> {
  const { bytes, boxes, pages } = await press.run(forms, {}, printPages)
  const finished = await press.keep([JSON.stringify([about, boxes]), bytes], async () => {
    const printed = await Pdf.load(bytes, { updateMetadata: false })
    if (printed.getPageCount() !== pages)
      throw new Error(`${printed.getPageCount()} pages instead of ${pages} of forms`)
    addFields(printed, boxes)
    return finishPdf(printed, about)
  })
  return { bytes: finished, pages }
}
