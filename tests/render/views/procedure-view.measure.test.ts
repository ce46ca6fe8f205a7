import { expect, it } from 'vitest'
import { openBook } from '../../../src/render/binder/book.ts'
import { procedureView } from '../../../src/render/views/procedure-view.ts'
import { demoManual } from '../../support/demo.ts'

it('what is measured first names its drawing, with the procedure that has it', async () => {
  const { manual, words } = await demoManual('larkmoor')
  const book = openBook(manual, words)
  const seal = manual.procedures.find((p) => p.id === 'seal')
  const test = manual.procedures.find((p) => p.id === 'moisture-test')
  if (!seal || !test) throw new Error('no procedure')
  const view = procedureView(seal, book.pen, () => '', book.drawingsOf('seal'))
  const said = view.measure.map((m) => m.do.toString()).join(' ')
  expect(said).toContain(`${book.drawings.squeeze?.called}, in ${test.number}`)
  // The drawing itself stands with the test alone.
  expect(view.methods.flatMap((m) => m.drawings.map(String)).join('')).not.toContain('squeeze')
})
