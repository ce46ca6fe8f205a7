import {
  PDFArray,
  PDFDict,
  type PDFName,
  PDFNumber,
  type PDFObject,
  PDFRef,
  PDFString,
} from '@cantoo/pdf-lib'
import type { PdfDictionary } from './kinds.ts'
import { nameText, theirs } from './library.ts'

/** How an object is written into another document than the one that it stands in. */
export type Move = {
  /** Number of the object that a reference leads to; nothing where none has taken its place. */
  readonly reference: (objectNumber: number) => number | undefined
  /** Key of the parent tree (ISO 32000-1, 14.7.4.4). */
  readonly parentKey: (key: number) => number
  /** Id of a structure element, or any other string. */
  readonly text: (said: string) => string
}

const isParentKey = (key: PDFName | undefined): boolean =>
  key !== undefined && /^StructParents?$/.test(nameText(key))

function leafText(leaf: PDFObject, key: PDFName | undefined, move: Move): string {
  if (leaf instanceof PDFRef) {
    const moved = move.reference(leaf.objectNumber)
    return moved === undefined ? 'null' : `${moved} 0 R`
  }
  if (leaf instanceof PDFNumber && isParentKey(key)) return String(move.parentKey(leaf.asNumber()))
  return leaf instanceof PDFString ? `(${move.text(leaf.asString())})` : String(leaf)
}

/** An object as it stands in a file (ISO 32000-1, 7.3), one character a byte; of a stream nothing. */
export function objectText(object: PDFObject, move?: Move, key?: PDFName): string {
  if (object instanceof PDFDict) {
    let text = '<<'
    for (const [name, value] of object.entries()) text += `${name} ${objectText(value, move, name)}`
    return `${text}>>`
  }
  if (object instanceof PDFArray) {
    let text = '['
    for (const [i, item] of object.asArray().entries())
      text += i === 0 ? objectText(item, move) : ` ${objectText(item, move)}`
    return `${text}]`
  }
  return move ? leafText(object, key, move) : String(object)
}

/** The entries of a dictionary as they stand in a file. */
export const insideText = (dictionary: PdfDictionary, move: Move): string =>
  objectText(theirs(dictionary), move).slice('<<'.length, -'>>'.length)
