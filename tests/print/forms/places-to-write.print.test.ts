import { describe, expect, it } from 'vitest'
import { placesToWrite } from '../../../src/print/forms/places-to-write.ts'
import { renderForms } from '../../../src/render/forms/render-forms.ts'
import { assetsFor, demoManual, demos } from '../../support/demo.ts'
import { faultsInPage } from '../../support/measure-boxes.ts'
import { usePress } from '../../support/test-press.ts'

const press = usePress()

describe.each(demos)('forms of %s', (id) => {
  it('have heads and lines that stand clear of each other', async () => {
    const { manual, words } = await demoManual(id)
    const faults = await press().run(
      renderForms(manual, await assetsFor(words, 'inline')),
      {},
      (page) => page.evaluate(faultsInPage, '.form'),
    )
    expect(faults).toEqual([])
  })
})

describe('places to write', () => {
  const form = (lines: number): { css: string; body: string } => ({
    css: '.form{position:relative;width:400px;height:200px}.form-body{height:160px}.place{position:absolute;left:30px;top:40px;width:90px;height:20px}',
    body: `<section class="form" id="form-any"><div class="form-body">${'<p>a line</p>'.repeat(lines)}<span class="place" data-field="depth" data-tip="Depth" data-kind="text" data-lines="2"></span></div></section>`,
  })

  it('are found with their names and where they stand on their own page', async () => {
    const { body, css } = form(1)
    const places = await press().run({ css, body: body + body }, {}, placesToWrite)
    const place = { name: 'depth', tip: 'Depth', kind: 'text', lines: 2, width: 90, height: 20 }
    expect(places).toEqual([
      { ...place, page: 0, x: 30, y: 40 },
      { ...place, page: 1, x: 30, y: 40 },
    ])
  })

  it('are refused by the name of the form where that runs off its page', async () => {
    await expect(press().run(form(30), {}, placesToWrite)).rejects.toThrow(
      'form-any does not fit on its page',
    )
  })
})
