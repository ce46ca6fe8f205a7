import path from 'node:path'
import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { beforeAll, describe, expect, it } from 'vitest'
import { renderForms } from '../../../src/render/forms/render-forms.ts'
import { assetsFor, demoManual } from '../../support/demo.ts'
import { printedDemo, printedDemos } from '../../support/printed-demos.ts'
import { openPdf, pageTexts } from '../../support/read-pdf.ts'

type Widget = {
  readonly fieldName: string
  readonly alternativeText: string
  readonly rect: readonly [number, number, number, number]
}

async function widgetsOf(pdf: PDFDocumentProxy): Promise<readonly (readonly Widget[])[]> {
  const pages: Widget[][] = []
  for (let n = 1; n <= pdf.numPages; n++) {
    const annotations = await (await pdf.getPage(n)).getAnnotations()
    pages.push(annotations.filter((a) => a.subtype === 'Widget') as unknown as Widget[])
  }
  return pages
}

/** Title and names of the places to write on each page, as rendered. */
async function renderedPages(id: (typeof printedDemos)[number]) {
  const { manual, words } = await demoManual(id)
  const sections = renderForms(manual, await assetsFor(words, 'inline'))
    .body.split('<section class="form')
    .slice(1)
  return sections.map((text) => ({
    title: (/<h1>([^<]*)/.exec(text)?.[1] ?? '').trim().replaceAll('&#x27;', "'"),
    fields: [...text.matchAll(/data-field="([^"]*)"/g)].map((m) => m[1] ?? ''),
  }))
}

describe.each(printedDemos)('forms of %s', (id) => {
  let pdf: PDFDocumentProxy
  let widgets: readonly (readonly Widget[])[]

  beforeAll(async () => {
    pdf = await openPdf(path.join((await printedDemo(id)).folder, 'forms.pdf'))
    widgets = await widgetsOf(pdf)
  })

  it('have one page for each page of a form, and a named field with a tooltip in every place to write', async () => {
    const rendered = await renderedPages(id)
    expect(pdf.numPages).toBe(rendered.length)
    const texts = await pageTexts(pdf)
    for (const [i, { title, fields }] of rendered.entries()) {
      expect(texts[i]).toContain(title)
      const own = widgets[i] ?? []
      expect(own.map((w) => w.fieldName).sort(), title).toEqual([...fields].sort())
      for (const w of own) expect(w.alternativeText, w.fieldName).toContain(title)
    }
  })

  it('lay no field over another', () => {
    expect(widgets.flat().length).toBeGreaterThan(10)
    const isApart = ({ rect: a }: Widget, { rect: b }: Widget): boolean =>
      a[0] >= b[2] || b[0] >= a[2] || a[1] >= b[3] || b[1] >= a[3]
    const overlapping = widgets.flatMap((own) =>
      own.flatMap((a, i) =>
        own.slice(i + 1).flatMap((b) => (isApart(a, b) ? [] : [`${a.fieldName}, ${b.fieldName}`])),
      ),
    )
    expect(overlapping).toEqual([])
  })
})
