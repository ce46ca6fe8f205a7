import { describe, expect, it } from 'vitest'
import { addObject, emptyDocument, openDocument } from '../../../src/print/pdf/documents.ts'
import { addFields, type Field } from '../../../src/print/pdf/fields.ts'
import { dictionary } from '../../../src/print/pdf/make-objects.ts'
import { setPages } from '../../../src/print/pdf/pages.ts'
import { saveDocument } from '../../../src/print/pdf/save-document.ts'
import { openBytes } from '../../support/read-pdf.ts'

const field = (name: string, kind: Field['kind'], page: number): Field => ({
  kind,
  name,
  tooltip: `Say ${name}`,
  page,
  box: { x: 20, y: 30, width: 10, height: 12.5 },
})

type Widget = {
  readonly fieldName: string
  readonly fieldType: string
  readonly alternativeText: string
  readonly multiLine?: boolean
  readonly checkBox?: boolean
  readonly fieldValue: string
  readonly exportValue?: string
  readonly rect: readonly number[]
}

/** Fields of the two pages of a file, as another program reads them. */
async function readBack(fields: readonly Field[]): Promise<readonly (readonly Widget[])[]> {
  const empty = emptyDocument()
  const page = () => dictionary(empty, { Type: 'Page', MediaBox: [0, 0, 612, 792] })
  setPages(empty, [addObject(empty, page()), addObject(empty, page())])
  const document = openDocument(saveDocument(empty))
  addFields(document, fields, addObject(document, dictionary(document, { Type: 'Font' })))
  const pdf = await openBytes(saveDocument(document))
  return Promise.all(
    [1, 2].map(async (n) => (await (await pdf.getPage(n)).getAnnotations()) as Widget[]),
  )
}

describe('fields laid over pages', () => {
  it('have the whole names of their groups, each on its page', async () => {
    const names = ['log.date', 'log.rain.inches', 'log.wet', 'alone']
    const kinds = ['line', 'lines', 'check', 'line'] as const
    const pages = await readBack(names.map((name, i) => field(name, kinds[i] ?? 'line', i % 2)))
    expect(pages.map((p) => p.map((w) => w.fieldName))).toEqual([
      ['log.date', 'log.wet'],
      ['log.rain.inches', 'alone'],
    ])
    const all = pages.flat()
    expect(all.map((w) => w.alternativeText)).toEqual(all.map((w) => `Say ${w.fieldName}`))
    expect(all.map((w) => w.fieldType)).toEqual(['Tx', 'Btn', 'Tx', 'Tx'])
    expect(all.map((w) => w.multiLine ?? false)).toEqual([false, false, true, false])
    for (const { rect } of all) expect(rect).toEqual([20, 30, 30, 42.5])
  })

  it('are boxes without a mark that can be given one', async () => {
    const [[box] = []] = await readBack([field('wet', 'check', 0)])
    expect(box).toMatchObject({ checkBox: true, fieldValue: 'Off', exportValue: 'Yes' })
  })
})
