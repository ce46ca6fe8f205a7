import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { onOval, ovalPath } from '../../../../src/render/drawings/oval/shape.ts'
import { ovalOf } from '../../support/oval-geometry.ts'

/** Length of a path of lines and half circles, worked out from its own data. */
function pathLength(d: string): number {
  let [x, y, length] = [0, 0, 0]
  let start: [number, number] = [0, 0]
  for (const m of d.matchAll(/([MHVLAZ])([^MHVLAZ]*)/g)) {
    const n = (m[2] ?? '')
      .trim()
      .split(/[\s,]+/)
      .filter(Boolean)
      .map(Number)
    const to: [number, number] =
      m[1] === 'H'
        ? [n[0] ?? 0, y]
        : m[1] === 'V'
          ? [x, n[0] ?? 0]
          : m[1] === 'A'
            ? [n[5] ?? 0, n[6] ?? 0]
            : m[1] === 'Z'
              ? start
              : [n[0] ?? 0, n[1] ?? 0]
    if (m[1] === 'M') start = to
    else length += m[1] === 'A' ? Math.PI * (n[0] ?? 0) : Math.hypot(to[0] - x, to[1] - y)
    ;[x, y] = to
  }
  return length
}

describe('plan of the oval', () => {
  it('is to scale: the drawn rail is as long as the rail', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 50, max: 800 }),
        fc.integer({ min: 25, max: 300 }),
        fc.integer({ min: 1, max: 5 }),
        (straight, radius, k) => {
          const g = ovalOf(straight, radius)
          expect(pathLength(ovalPath(g, 0, k, [0, 0])) / k / g.railLength).toBeCloseTo(1, 4)
        },
      ),
      { numRuns: 40 },
    )
  })

  it('puts stations along the rail at their true distance', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 400 }),
        fc.integer({ min: 40, max: 200 }),
        fc.integer({ min: 0, max: 999 }),
        (straight, radius, part) => {
          const g = ovalOf(straight, radius)
          const s = (part / 1000) * g.railLength
          const [a, b] = [onOval(g, s, 0).point, onOval(g, s + 0.01, 0).point]
          expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeCloseTo(0.01, 5)
          const out = onOval(g, s, 5).point
          expect(Math.hypot(out[0] - a[0], out[1] - a[1])).toBeCloseTo(5, 9)
        },
      ),
      { numRuns: 60 },
    )
  })

  it('starts at the home straight below and runs counterclockwise', () => {
    const g = ovalOf(180, 70)
    expect(onOval(g, 0, 0).point).toEqual([-90, 70])
    expect(onOval(g, 10, 0).point[0]).toBeGreaterThan(-90)
    expect(onOval({ ...g, direction: 'clockwise' }, 10, 0).point[0]).toBeLessThan(90)
  })
})
