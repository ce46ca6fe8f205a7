import { describe, expect, it } from 'vitest'
import { unmarkDecoration } from '../../../src/print/content/unmark-decoration.ts'

describe('unmarkDecoration', () => {
  const content =
    '/Div <</MCID 0 >>BDC\n0 0 1 1 re\nf\nEMC\n/P <</MCID 1 >>BDC\nBT\n<00> Tj\nET\nEMC'.split('\n')

  it('makes tagged rules artifacts and leaves words', () => {
    expect(unmarkDecoration(content, () => false)).toEqual({
      content: ['/Artifact BMC', ...content.slice(1)],
      removed: [0],
    })
  })

  it('leaves what it is told to keep', () => {
    expect(unmarkDecoration(content, () => true)).toEqual({ content, removed: [] })
  })
})
