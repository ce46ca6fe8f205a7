import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { screenSvg } from '../../../src/render/drawings/screen-svg.ts'

const drawn = (d: string, width = 480): string =>
  `<svg viewBox="0 0 ${width} 300"><path d="${d}"/></svg>`

const pathOf = (svg: string): string => /\sd="([^"]*)"/.exec(svg)?.[1] ?? ''

/** Points of a path of straight steps, worked out by hand. */
function points(d: string): readonly (readonly [number, number])[] {
  let [x, y] = [0, 0]
  const all: [number, number][] = []
  for (const [, command = '', numbers = ''] of d.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const steps = (numbers.match(/-?\d*\.?\d+/g) ?? []).map(Number)
    for (let i = 0; i + 1 < steps.length; i += 2) {
      const [u = 0, v = 0] = [steps[i], steps[i + 1]]
      ;[x, y] = command === command.toLowerCase() ? [x + u, y + v] : [u, v]
      all.push([x, y])
    }
  }
  return all
}

const coordinate = fc.integer({ min: 0, max: 48000 }).map((n) => n / 100)

describe('a drawing for a screen', () => {
  it('has every point within a tenth of a unit of where it was, however many there are', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(coordinate, coordinate), { minLength: 2, maxLength: 200 }),
        (all) => {
          const d = all.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`).join('')
          const [before, after] = [points(d), points(pathOf(screenSvg(drawn(d))))]
          expect(after).toHaveLength(before.length)
          for (const [i, [x, y]] of before.entries()) {
            expect(Math.abs((after[i]?.[0] ?? 0) - x)).toBeLessThanOrEqual(0.1)
            expect(Math.abs((after[i]?.[1] ?? 0) - y)).toBeLessThanOrEqual(0.1)
          }
        },
      ),
      { numRuns: 50 },
    )
  })

  it('takes fewer characters, and more digits where the drawing is small', () => {
    const d = 'M361.24 86.97L364.17 87.42L366.05 88.13Z'
    expect(pathOf(screenSvg(drawn(d))).length).toBeLessThan(d.length * 0.7)
    expect(pathOf(screenSvg(drawn('M1.24 2.13l.5.25', 24)))).toContain('1.24 2.13')
  })

  it('has dots of a scatter within half a unit of where they were', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(coordinate, coordinate), { minLength: 1 }), (all) => {
        const shown = pathOf(screenSvg(drawn(all.map(([x, y]) => `M${x} ${y}h0`).join(''))))
        const after = points(shown.replaceAll('h0', ''))
        expect(after).toHaveLength(all.length)
        for (const [i, [x, y]] of all.entries()) {
          expect(Math.abs((after[i]?.[0] ?? 0) - x)).toBeLessThanOrEqual(0.25)
          expect(Math.abs((after[i]?.[1] ?? 0) - y)).toBeLessThanOrEqual(0.25)
        }
      }),
      { numRuns: 50 },
    )
  })

  it('says and shows the same', () => {
    const text = '<text x="12.345" fill-opacity="0.35">d="M1.234 5.678"</text>'
    expect(screenSvg(`<svg viewBox="0 0 200 9">${text}</svg>`)).toBe(
      `<svg viewBox="0 0 200 9">${text.replace('12.345', '12.3')}</svg>`,
    )
  })
})
