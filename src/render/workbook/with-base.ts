import { strToU8 } from 'fflate'
import { type Base, baseSheet, baseTexts } from '../../edit/workbook/base.ts'
import { isStop, openArchive } from '../../read/workbook/archive.ts'
import { partOfSheet } from '../../read/workbook/read-workbook.ts'
import { packed } from '../tables/workbook.ts'

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')

/** A sheet of texts below each other, and nothing else (ECMA-376-1, 18.3.1.99). */
const sheetXml = (texts: readonly string[]): string =>
  [
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n',
    '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>',
    ...texts.map(
      (text, i) =>
        `<row r="${i + 1}"><c r="A${i + 1}" t="inlineStr"><is><t xml:space="preserve">${escaped(text)}</t></is></c></row>`,
    ),
    '</sheetData></worksheet>',
  ].join('')

/**
 * A workbook that somebody has filled in, with another note of what it was made of: every other part
 * of it, with remarks, sheets and widths of its owner, stays as it is to the byte.
 * @returns undefined for one that has no such note.
 */
export function withBase(bytes: Uint8Array, base: Base): Uint8Array | undefined {
  try {
    const part = partOfSheet(openArchive(bytes), baseSheet)
    if (part === undefined) return undefined
    const archive = openArchive(bytes)
    const parts = archive.names
      .filter((name) => !name.endsWith('/'))
      .map((name) => [name, archive.part(name) ?? new Uint8Array(0)] as const)
    return packed({ ...Object.fromEntries(parts), [part]: strToU8(sheetXml(baseTexts(base))) })
  } catch (thrown) {
    // A part that nobody has read may be larger than all that is unpacked.
    if (isStop(thrown)) return undefined
    throw thrown
  }
}
