import { describe, expect, it } from 'vitest'
import {
  type Edge,
  edgeIndex,
  tabBox,
  tabName,
  tabWidth,
  unprinted,
} from '../../../src/render/binder/edge-tabs.ts'

const edge = (titles: number): Edge => ({
  hand: 'right',
  height: 9.2,
  titles: Array.from({ length: titles }, (_, i) => `Part "${i + 1}"`),
  color: '#000',
})

/** Top, right, bottom and left margin of a box, as far as they are lengths. */
const marginOf = (css: string): (number | undefined)[] =>
  (/margin:([^;]+)/.exec(css)?.[1] ?? '')
    .split(' ')
    .map((m) => (m === 'auto' ? undefined : Number.parseFloat(m)))

const heightOf = (css: string): number => Number(/height:([\d.]+)in/.exec(css)?.[1])

describe('tabs along the edge', () => {
  it('stand clear of what an office printer leaves white, on either hand', () => {
    expect(unprinted).toBeGreaterThanOrEqual(18 / 72)
    expect(marginOf(tabBox(edge(16), 3, tabWidth.page))[1]).toBe(unprinted)
    const left = { ...edge(16), hand: 'left' } as const
    expect(marginOf(tabBox(left, 3, tabWidth.page))[3]).toBe(unprinted)
  })

  it('all lie between the margins, one below the other', () => {
    for (const count of [1, 9, 16, 30]) {
      const tabs = Array.from({ length: count }, (_, i) =>
        tabBox(edge(count), i + 1, tabWidth.page),
      )
      const tops = tabs.map((css) => marginOf(css)[0] ?? Number.NaN)
      const ends = tabs.map((css, i) => (tops[i] ?? 0) + heightOf(css))
      for (const [i, top] of tops.entries())
        expect(top).toBeGreaterThan(i === 0 ? -1e-9 : (ends[i - 1] ?? 0))
      expect(ends.at(-1)).toBeLessThanOrEqual(9.2)
    }
  })

  it('have the title beside them, which stays on the page', () => {
    for (let number = 1; number <= 16; number++) {
      const css = tabName(edge(16), number)
      expect(css).toContain(`content:"Part \\"${number}\\""`)
      const up = marginOf(css)[2] ?? Number.NaN
      expect(up).toBeGreaterThanOrEqual(0)
      expect(up + heightOf(css)).toBeLessThanOrEqual(9.2)
    }
  })

  it('are shown together, each at the height of its own', () => {
    const css = edgeIndex(edge(16))
    const line = Number(/font:600 15pt\/([\d.]+)in/.exec(css)?.[1])
    for (let number = 1; number <= 16; number++)
      expect(marginOf(tabBox(edge(16), number, 1))[0]).toBeCloseTo((number - 1) * line, 2)
    expect(css.match(/Part/g)).toHaveLength(16)
  })
})
