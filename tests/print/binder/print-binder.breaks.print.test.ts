import path from 'node:path'
import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { beforeAll, describe, expect, it } from 'vitest'
import type { Manual } from '../../../src/model/manual.ts'
import { margins } from '../../../src/render/binder/page-rules.ts'
import { demoManual } from '../../support/demo.ts'
import { printedDemo, printedDemos } from '../../support/printed-demos.ts'
import { allWords, openPdf, pageTexts, type Word } from '../../support/read-pdf.ts'
import { textBoxes } from '../../support/text-boxes.ts'

/** The last line of the body of a page. */
function lastLine(words: readonly Word[]): string {
  const body = textBoxes(words).filter((b) => b.low > margins.bottom * 72)
  const lowest = Math.min(...body.map((b) => b.low))
  return body
    .filter((b) => b.low < lowest + 2)
    .map((b) => b.text)
    .join('')
    .trim()
}

const headingsOf = (manual: Manual): ReadonlySet<string> =>
  new Set([
    ...manual.procedures.flatMap((p) => [p.title, ...p.methods.map((m) => m.title)]),
    'Measure first',
    'Right when',
    'If it isn’t right',
    'Stop and call',
    'Write down',
    'Why we do it this way',
    'Ready reckoners',
    'Questions',
    'Index of terms',
    'The pages of the procedures that use the term.',
  ])

/** How the cautions end, long enough to tell them from other lines. */
const cautionEnds = (manual: Manual): readonly string[] =>
  manual.cautions
    .map((c) =>
      c.avoid
        .replace(/[^}]*\}/g, '')
        .replace(/\s/g, '')
        .slice(-16),
    )
    .filter((end) => end.length > 8)

describe.each(printedDemos)('pages of the binder of %s', (id) => {
  let manual: Manual
  let pdf: PDFDocumentProxy

  beforeAll(async () => {
    ;({ manual } = await demoManual(id))
    pdf = await openPdf(path.join((await printedDemo(id)).folder, 'binder.pdf'))
  })

  it('leave no heading and no caution alone at their foot', async () => {
    const labels = (await pdf.getPageLabels()) ?? []
    const headings = headingsOf(manual)
    // In procedures a step follows every caution; all cautions stand once more in a part of their
    // own.
    const ends = cautionEnds(manual)
    const sections = new Set(manual.sections.map((s) => String(s.number)))
    for (const [i, words] of (await allWords(pdf)).entries()) {
      const label = labels[i] ?? ''
      if (!label.includes('-')) continue
      const line = lastLine(words)
      const isHeading = headings.has(line.replace(/^\d+\.\d+\s*/, ''))
      expect(isHeading, `“${line}” at the foot of ${label}`).toBe(false)
      if (sections.has(label.split('-')[0] ?? ''))
        expect(
          ends.find((end) => line.replace(/\s/g, '').endsWith(end)),
          `a caution at the foot of ${label}`,
        ).toBeUndefined()
    }
  })

  it('keep together what is said to stand on one page', async () => {
    const chart = manual.schedules.find((p) => p.id === 'symptom-chart')
    const texts = await pageTexts(pdf)
    const page = texts.find((t) => t.includes(`${chart?.title} Do the first check`)) ?? ''
    expect(page).toContain(manual.symptoms.at(-1)?.says ?? 'no symptoms')
  })
})
