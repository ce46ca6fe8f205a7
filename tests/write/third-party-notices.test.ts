import { describe, expect, it } from 'vitest'
import { loadFonts } from '../../src/cli/load/load-fonts.ts'
import { thirdPartyNotices } from '../../src/write/third-party-notices.ts'

describe('notices of third parties', () => {
  it('name every family with the notice of its makers and the whole licence', async () => {
    const { licences, linked } = await loadFonts()
    const text = thirdPartyNotices(licences)
    const families = new Set([...linked.matchAll(/font-family:"([^"]+)"/g)].map((m) => m[1]))
    expect([...families].sort()).toEqual(licences.map((l) => l.family).sort())
    for (const family of families) expect(text).toContain(`- ${family}\n`)
    const parts = text.split('SIL OPEN FONT LICENSE Version 1.1').slice(1)
    expect(parts).toHaveLength(licences.length)
    for (const part of parts)
      for (const heading of ['PREAMBLE', 'DEFINITIONS', 'PERMISSION & CONDITIONS', 'TERMINATION'])
        expect(part).toContain(heading)
    for (const maker of ['Adobe', 'The Barlow Project Authors', 'The STIX Fonts Project Authors'])
      expect(text).toMatch(new RegExp(`Copyright .*${maker}`))
  })

  it('has line ends of one kind', () => {
    const text = thirdPartyNotices([{ family: 'Any', text: 'one\r\ntwo\r\n\r\n' }])
    expect(text).not.toContain('\r')
    expect(text.endsWith('one\ntwo\n')).toBe(true)
  })
})
