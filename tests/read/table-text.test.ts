import { describe, expect, it } from 'vitest'
import { tableText, utf8Text } from '../../src/read/table-text.ts'

const bytes = (text: string, encoding: BufferEncoding): Uint8Array => Buffer.from(text, encoding)
const text = 'high (°F),note\n82,Rösti – 5 €\n'

describe('the text of a table', () => {
  it('is read in UTF-8, in UTF-16 by its mark, else in windows-1252', () => {
    expect(tableText(bytes(text, 'utf8'))).toBe(text)
    expect(tableText(bytes(`\uFEFF${text}`, 'utf16le'))).toBe(text)
    const swapped = Buffer.from(bytes(`\uFEFF${text}`, 'utf16le')).swap16()
    expect(tableText(swapped)).toBe(text)
    // Some rows of the index of windows-1252 in the Encoding Standard (WHATWG).
    const index = { 128: '€', 133: '…', 138: 'Š', 145: '‘', 148: '”', 150: '–', 159: 'Ÿ' }
    const others = { 176: '°', 189: '½', 214: 'Ö', 255: 'ÿ' }
    for (const [byte, letter] of Object.entries({ ...index, ...others }))
      expect(tableText(Uint8Array.of(0x61, Number(byte), 0x0a))).toBe(`a${letter}\n`)
  })

  it('is none where the bytes are those of another kind of file', () => {
    expect(tableText(Uint8Array.of(0x50, 0x4b, 3, 4, 0, 0xff))).toBeUndefined()
    expect(utf8Text(Uint8Array.of(0x61, 0xff))).toBeUndefined()
    expect(utf8Text(Uint8Array.of(0x61, 0))).toBeUndefined()
    expect(utf8Text(bytes('a\uFFFDb', 'utf8'))).toBe('a\uFFFDb')
  })
})
