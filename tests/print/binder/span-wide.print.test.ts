import { describe, expect, it } from 'vitest'
import { spanWide } from '../../../src/print/binder/span-wide.ts'
import { usePress } from '../../support/test-press.ts'

const css = 'body{margin:0} .columns{columns:2;column-gap:20px} b{display:block}'

describe('what is wider than its column', () => {
  const press = usePress()

  it('is marked to span the columns, and nothing else', async () => {
    const part = (width: number) => `<div class="may-span"><b style="width:${width}px">x</b></div>`
    const body = `<div class="columns">${part(100)}${part(400)}</div>`
    const spans = await press().run(
      { css, body },
      { width: 620, height: 900 },
      async (page, area) => {
        await spanWide(page, area)
        return page.evaluate(() =>
          [...document.querySelectorAll('.may-span')].map((e) => e.className),
        )
      },
    )
    expect(spans).toEqual(['may-span', 'may-span spans'])
  })
})
