import { describe, expect, it } from 'vitest'
import { refuseWide } from '../../../src/print/page/refuse-wide.ts'
import { usePress } from '../../support/test-press.ts'

const css = 'body{margin:0} .wide{width:700px} .in{width:300px}'
const width = 633

describe('what is wider than its page', () => {
  const press = usePress()
  const look = (body: string): Promise<void> =>
    press().run({ css, body }, { width }, (page, args) => refuseWide(page, args.width))

  it('is refused with its text, before the browser prints everything smaller for its sake', async () => {
    const body = '<p>fits</p><div><p class="wide">a line that does not fit</p></div>'
    await expect(look(body)).rejects.toThrow('wider than the page: a line that does not fit')
  })

  it('is nothing that fits', async () => {
    await expect(look('<p>fits</p><div class="in">so does this</div>')).resolves.toBeUndefined()
  })
})
