import { describe, expect, it } from 'vitest'
import { faultsInPage } from './measure-boxes.ts'
import { usePress } from './test-press.ts'

const press = usePress()

describe('what is measured in a page', () => {
  const set = (body: string): Promise<string[]> =>
    press().run(
      {
        css: '.box{position:relative;width:200px;height:60px;overflow:hidden;font:16px/20px "Source Sans 3"}',
        body: `<div class="box" id="b">${body}</div>`,
      },
      {},
      (page) => page.evaluate(faultsInPage, '.box'),
    )

  it('finds words on words, words that reach out, and boxes that are too small', async () => {
    expect(await set('<p style="margin:0">fine</p><p style="margin:0">below</p>')).toEqual([])
    expect(
      (
        await set(
          '<p style="margin:0">one</p><p style="position:absolute;margin:0;top:3px;left:2px">two</p>',
        )
      ).join(),
    ).toContain('lie on each other')
    expect((await set('<p style="margin:0">one<br>two<br>three<br>four</p>')).join()).toContain(
      'holds more than it shows',
    )
    expect(
      (await set('<p style="position:absolute;margin:0;left:-20px">out</p>')).join(),
    ).toContain('reaches out')
  })
})
