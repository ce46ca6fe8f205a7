import type { PDFField, PDFForm, PDFPage } from '@cantoo/pdf-lib'
import { dictionaryAt, removeEntry, setEntry } from './dictionaries.ts'
import { catalogOf } from './documents.ts'
import type { PdfDocument, PdfReference } from './kinds.ts'
import { ours, theirs } from './library.ts'
import { dictionary, plainText, unicodeText } from './make-objects.ts'

/** A place to write on a page of a form. */
export type Field = {
  readonly kind: 'check' | 'line' | 'lines'
  readonly name: string
  /** What a viewer says of it where the pointer rests, and a reader for the blind reads. */
  readonly tooltip: string
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

const fontName = 'Typing'

/** Type of size 0 is as large as the field has room for: whatever is typed stays in it. */
const typing = `/${fontName} 0 Tf 0 g`

function made(form: PDFForm, page: PDFPage, { kind, name, box }: Field): PDFField {
  const place = { ...box, borderWidth: 0 }
  if (kind === 'check') {
    const field = form.createCheckBox(name)
    field.addToPage(page, place)
    return field
  }
  const field = form.createTextField(name)
  if (kind === 'lines') field.enableMultiline()
  field.addToPage(page, place)
  return field
}

/** Lays an empty field over a page. */
export function addField(document: PdfDocument, field: Field): void {
  const library = theirs(document)
  const { acroField } = made(library.getForm(), library.getPage(field.page), field)
  const widgets = acroField.getWidgets().map((w) => ours(w.dict))
  // The tooltip belongs to the field; readers that look at the widget alone find it there too.
  for (const dict of [ours(acroField.dict), ...widgets])
    setEntry(dict, 'TU', unicodeText(field.tooltip))
  if (field.kind === 'check') return
  setEntry(ours(acroField.dict), 'DA', plainText(typing))
  // What the library has painted for an empty field is a white ground, in a font that is nowhere.
  for (const widget of widgets) for (const key of ['AP', 'MK']) removeEntry(widget, key)
}

/** Gives the fields of a document the font in which they are filled in. */
export function setTypingFont(document: PdfDocument, font: PdfReference): void {
  const form = dictionaryAt(catalogOf(document), 'AcroForm')
  if (!form) return
  setEntry(form, 'DR', dictionary(document, { Font: { [fontName]: font } }))
  setEntry(form, 'DA', plainText(typing))
}
