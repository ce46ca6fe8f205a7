import { describe, expect, it } from 'vitest'
import { loadFonts } from '../../../src/cli/load/load-fonts.ts'
import { firstCode, metricsOf } from '../../../src/print/forms/font-metrics.ts'
import { addTypingFont } from '../../../src/print/forms/typing-font.ts'
import { tablesOfWoff, trueTypeOf } from '../../../src/print/forms/woff.ts'
import { arrayAt, dictionaryAt, lookUp, textAt } from '../../../src/print/pdf/dictionaries.ts'
import { addObject, catalogOf, emptyDocument, resolve } from '../../../src/print/pdf/documents.ts'
import { addFields } from '../../../src/print/pdf/fields.ts'
import { dictionary } from '../../../src/print/pdf/make-objects.ts'
import { asDictionary, asNumber, itemsOf } from '../../../src/print/pdf/objects.ts'
import { setPages } from '../../../src/print/pdf/pages.ts'
import { streamBytes } from '../../../src/print/pdf/streams.ts'

const { typing } = await loadFonts()

async function formWithFields() {
  const document = emptyDocument()
  const page = dictionary(document, { Type: 'Page', MediaBox: [0, 0, 612, 792] })
  setPages(document, [addObject(document, page)])
  const kinds = ['line', 'lines', 'check'] as const
  const wanted = kinds.map((kind, i) => ({
    kind,
    name: `field-${i}`,
    tooltip: 'Somewhere to write',
    page: 0,
    box: { x: 50, y: 100 + 50 * i, width: 120, height: 17 },
  }))
  addFields(document, wanted, addTypingFont(document, typing))
  const form = dictionaryAt(catalogOf(document), 'AcroForm')
  const fields = itemsOf(arrayAt(form, 'Fields')).map((f) => asDictionary(resolve(document, f)))
  return { form, fields }
}

describe('the font in which forms are filled in', () => {
  it('is unpacked as a TrueType file that begins with its tables in order', () => {
    const tables = tablesOfWoff(typing)
    const file = Buffer.from(trueTypeOf(tables))
    expect(file.readUInt32BE(0)).toBe(0x00010000)
    const names = Array.from({ length: file.readUInt16BE(4) }, (_, i) =>
      file.toString('latin1', 12 + 16 * i, 16 + 16 * i),
    )
    expect(names).toEqual([...tables.keys()].sort())
    for (const [i, name] of names.entries()) {
      const at = file.readUInt32BE(12 + 16 * i + 8)
      expect(file.subarray(at, at + (tables.get(name)?.length ?? 0))).toEqual(tables.get(name))
    }
  })

  it('refuses what is no WOFF file', () => {
    expect(() => tablesOfWoff(new Uint8Array(100))).toThrow('no WOFF file')
  })

  it('says how wide letters are: digits all alike, W wider than i', () => {
    const { widths, ascent, descent } = metricsOf(tablesOfWoff(typing))
    const width = (letter: string) => widths[letter.charCodeAt(0) - firstCode] ?? 0
    expect(new Set([...'0123456789'].map(width)).size).toBe(1)
    expect(width('W')).toBeGreaterThan(2 * width('i'))
    expect(width('é')).toBe(width('e'))
    expect(ascent).toBeGreaterThan(700)
    expect(descent).toBeLessThan(-200)
  })

  it('is embedded, and the one that every field names, as large as there is room', async () => {
    const { form, fields } = await formWithFields()
    const fonts = dictionaryAt(dictionaryAt(form, 'DR'), 'Font')
    const font = dictionaryAt(fonts, 'Typing')
    const program = lookUp(dictionaryAt(font, 'FontDescriptor'), 'FontFile2')
    expect(streamBytes(program)?.length).toBeGreaterThan(10_000)
    const [line, lines] = fields.map((f) => textAt(f, 'DA'))
    expect([line, lines]).toEqual(['/Typing 0 Tf 0 g', '/Typing 0 Tf 0 g'])
    const widths = itemsOf(arrayAt(font, 'Widths')).map(asNumber)
    expect(widths).toHaveLength(224)
  })
})
