import { describe, expect, it } from 'vitest'
import { wrapArtifacts } from '../../../src/print/content/wrap-artifacts.ts'

describe('wrapArtifacts', () => {
  it('wraps what is painted outside tags, and nothing inside them', () => {
    const content =
      'q\n/P <</MCID 0 >>BDC\nBT\n(a) Tj\nET\nEMC\n0 0 m\n1 1 l\nS\nBT\n(head) Tj\nET\n0 0 1 1 re\nW\nn\nQ'
    expect(wrapArtifacts(content.split('\n')).join('\n')).toBe(
      'q\n/P <</MCID 0 >>BDC\nBT\n(a) Tj\nET\nEMC\n/Artifact BMC\n0 0 m\n1 1 l\nS\nEMC\n/Artifact BMC\nBT\n(head) Tj\nET\nEMC\n0 0 1 1 re\nW\nn\nQ',
    )
  })
})
