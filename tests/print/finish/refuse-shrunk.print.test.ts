import { describe, expect, it } from 'vitest'
import { refuseShrunk } from '../../../src/print/finish/refuse-shrunk.ts'
import { openDocument } from '../../../src/print/pdf/documents.ts'
import { printRaw } from '../../../src/print/press/print-pages.ts'
import { usePress } from '../../support/test-press.ts'

describe('a print', () => {
  const press = usePress()
  const look = async (width: string): Promise<void> =>
    refuseShrunk(
      openDocument(
        await printRaw(press(), {
          css: '@page{size:8.5in 11in;margin:1in} body{margin:0}',
          body: `<p style="width:${width};background:#ccc">a line</p>`,
        }),
      ),
    )

  it('is refused when the browser made it smaller to hold what is too wide', async () => {
    await expect(look('8in')).rejects.toThrow(/printed at \d\d % of its size/)
  })

  it('is taken at its own size', async () => {
    await expect(look('6in')).resolves.toBeUndefined()
  })
})
