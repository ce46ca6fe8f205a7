import type { PDFField, PDFForm, PDFPage } from '@cantoo/pdf-lib'
import { setEntry } from './dictionaries.ts'
import type { PdfDocument } from './kinds.ts'
import { ours, theirs } from './library.ts'
import { unicodeText } from './make-objects.ts'

/** A place to write on a page of a form. */
export type Field = {
  readonly kind: 'check' | 'line' | 'lines'
  readonly name: string
  /** What a viewer says of it where the pointer rests, and a reader for the blind reads. */
  readonly tooltip: string
  /** Size of the type in which somebody writes, points. */
  readonly typeSize: number
  /** Page, from 0. */
  readonly page: number
  /** Points from the page's lower left. */
  readonly box: {
    readonly x: number
    readonly y: number
    readonly width: number
    readonly height: number
  }
}

function made(form: PDFForm, page: PDFPage, { kind, name, typeSize, box }: Field): PDFField {
  const place = { ...box, borderWidth: 0 }
  if (kind === 'check') {
    const field = form.createCheckBox(name)
    field.addToPage(page, place)
    return field
  }
  const field = form.createTextField(name)
  if (kind === 'lines') field.enableMultiline()
  field.addToPage(page, place)
  field.setFontSize(typeSize)
  return field
}

/** Lays an empty field over a page. */
export function addField(document: PdfDocument, field: Field): void {
  const library = theirs(document)
  const { acroField } = made(library.getForm(), library.getPage(field.page), field)
  // The tooltip belongs to the field; readers that look at the widget alone find it there too.
  for (const dict of [acroField.dict, ...acroField.getWidgets().map((w) => w.dict)])
    setEntry(ours(dict), 'TU', unicodeText(field.tooltip))
}
