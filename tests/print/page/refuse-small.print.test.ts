import { describe, expect, it } from 'vitest'
import { refuseSmall } from '../../../src/print/page/refuse-small.ts'
import { usePress } from '../../support/test-press.ts'

const css = 'body{margin:0} svg{display:block;width:100%}'
const width = 600

const drawing = (size: number): string =>
  `<figure class="drawing" style="margin:0"><svg viewBox="0 0 450 40"><text x="0" y="20" font-size="${size}">rail</text></svg></figure>`

describe('type in a drawing', () => {
  const press = usePress()
  const look = (body: string): Promise<void> =>
    press().run({ css, body }, { width }, (page, args) => refuseSmall(page, args.width))

  it('is refused when it would be printed smaller than 8 points', async () =>
    await expect(look(drawing(7))).rejects.toThrow('type in a drawing under 8 pt: 7.0 pt: rail'))

  it('may be 8 points', async () => await expect(look(drawing(8))).resolves.toBeUndefined())
})
