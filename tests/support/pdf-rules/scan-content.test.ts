import { describe, expect, it } from 'vitest'
import { scanContent } from './scan-content.ts'

describe('scanContent', () => {
  it('is not misled by operators in strings, comments and images', () => {
    const scan = scanContent(
      '/P <</MCID 3>> BDC BT (a \\) (EMC) f) Tj ET EMC % f\n/Artifact BMC BI /W 1 /H 1 ID f S EMC EI EMC',
    )
    expect(scan).toEqual({ mcids: [3], unmarked: new Map(), mixed: [], balanced: true })
  })

  it('finds numbers in property lists of the resources', () => {
    expect(
      scanContent('/P /MC0 BDC\nf\nEMC', (name) => (name === 'MC0' ? 7 : undefined)).mcids,
    ).toEqual([7])
  })
})
