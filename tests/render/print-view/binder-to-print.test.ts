import { describe, expect, it } from 'vitest'
import { loadTemplates } from '../../../src/cli/load/load-templates.ts'
import { elsewhere } from '../../../src/render/binder/link-parts.ts'
import { binderToPrint } from '../../../src/render/print-view/binder-to-print.ts'
import { demoManual, folders } from '../../support/demo.ts'

const rendered = async (id: string) => {
  const { manual, words } = await demoManual(id)
  const assets = { ...(await loadTemplates(folders)), words, fontCss: '' }
  return binderToPrint(manual, assets, manual.facility.binder.ink)
}

describe('a binder as one document', () => {
  it('breaks columns where it breaks pages', async () => {
    const { css } = await rendered('larkmoor')
    const breaks = (text: string, kind: string): number =>
      text.split(new RegExp(`break-(?:before|after):\\s*${kind}\\b`)).length - 1
    expect(breaks(css.laying, 'page')).toBe(0)
    expect(breaks(css.laying, 'column')).toBe(breaks(css.paper, 'page'))
    expect(breaks(css.laying, 'column')).toBeGreaterThan(5)
  })

  it('depends on no height of a screen, and leads nowhere outside', async () => {
    const { css, work } = await rendered('larkmoor')
    expect(css.laying + css.paper).not.toMatch(/\d(?:vh|vw)\b/)
    expect(JSON.stringify(work)).not.toContain(elsewhere)
  })

  it('counts the pages of each part by itself: divider, pages, blank', async () => {
    const { css, work } = await rendered('larkmoor')
    if (work.kind !== 'binder') throw new Error('no binder')
    for (const [i, { number }] of work.parts.entries()) {
      const counts = css.paper
        .split('@page ')
        .filter((rule) => rule.includes(`counter-increment:part-${i}`))
        .map((rule) => rule.split(/[{:]/)[0])
      expect(counts, `part ${number}`).toContain(`blank-${i}`)
      expect(counts, `part ${number}`).not.toContain(`divider-${i}`)
      expect(counts.length).toBeGreaterThan(1)
    }
  })

  it('has right-hand pages alone where one side of a leaf is printed', async () => {
    const { manual, words } = await demoManual('larkmoor')
    const assets = { ...(await loadTemplates(folders)), words, fontCss: '' }
    const binder = { ...manual.facility.binder, sides: 1 } as const
    const facility = { ...manual.facility, binder }
    const { css } = binderToPrint({ ...manual, facility }, assets, 'black')
    expect(css.paper).not.toMatch(/@page [^{]*:left/)
  })
})
