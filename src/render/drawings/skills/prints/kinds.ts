import { area, dots, type Point, poly, scatter, stroke } from '../../ink.ts'
import { arc, between, crumbs, foot, frog, inward, iron, nails, ring, toe } from './shoe.ts'

/** A kind of print: from above, and its floor cut from heel to toe. */
type PrintKind = {
  /** Around 0, 0, `u` points an inch, the toe to the right. */
  readonly plan: (u: number) => string
  /**
   * Surface and floor from left to right, in inches: along the print, and down from the surface.
   * @param usual Depth of a usual print, inches.
   */
  readonly cut: (usual: number) => readonly Point[]
  /** How far the print stands off the middle of its picture, in inches. */
  readonly off?: number
}

const rows = [-1.9, -1.45, -1, -0.5, 0, 0.5, 1, 1.45, 1.9]
const n = (x: number): string => String(Math.round(x * 100) / 100)

/** Strokes along the way of the horse, each from `from` to `to` inches. */
const along = (
  u: number,
  pen: number,
  at: (y: number, i: number) => readonly [from: number, to: number],
): string =>
  stroke(
    rows
      .map((y, i) => {
        const [from, to] = at(y, i)
        return `M${n(from * u)} ${n(y * u)}H${n(to * u)}`
      })
      .join(''),
    { pen },
  )

const even: PrintKind = {
  plan: (u) =>
    area(foot(u), { fill: 'stone', stroke: 'none' }) +
    area(iron(u), { fill: 'paper', pen: 1.3 }) +
    nails(u) +
    frog(u),
  cut: (d) => [
    [-2.3, 0],
    [-2.3, d],
    [1.7, d],
    [1.8, d + 0.1],
    [2.6, d + 0.1],
    [2.6, 0],
  ],
}

const crumbled: PrintKind = {
  plan: (u) =>
    area(ring(u, 1.16, 0.18, 3), { fill: 'stone' }) +
    between(u, 1.06, 0.82) +
    area(ring(u, 0.62, 0.16, 9), { fill: 'paper', pen: 0.6, dash: '2 1.5' }) +
    crumbs(u, 22, 0.2, 8, (r) => {
      const [a, k] = [r() * 2 * Math.PI, 1.22 + r() * 0.12]
      return [2.6 * k * Math.cos(a), 2.35 * k * Math.sin(a)]
    }),
  cut: (d) => [
    [-3.4, 0.02],
    [-2.9, 0.2],
    [-1.9, d + 0.1],
    [-0.5, d + 0.3],
    [1, d + 0.25],
    [2.2, d],
    [3, 0.2],
    [3.5, 0],
  ],
}

const deep: PrintKind = {
  off: 0.8,
  plan: (u) =>
    area(foot(u), { fill: 'stone', pen: 1.6 }) +
    inward(u, (a) => 0.16 + 0.42 * Math.max(0, Math.cos((a * Math.PI) / 180))) +
    toe(u) +
    crumbs(u, 15, 0.26, 5, (r) => [-2.8 - r() * 2.4, (r() - 0.5) * 3.6]),
  cut: (d) => [
    [-5, -0.05],
    [-4, -0.42],
    [-3, -0.5],
    [-2.4, 0.1],
    [-2.2, d + 0.1],
    [1.2, d + 0.45],
    [1.9, d + 0.7],
    [2.6, d + 0.7],
    [2.6, 0.1],
    [3, 0],
  ],
}

const hard: PrintKind = {
  plan: (u) =>
    arc(u, -62, 62, 1, 1.1) +
    arc(u, -50, 50, 0.78, 0.6, '4 3') +
    arc(u, 74, 130, 1, 0.6, '3 3') +
    arc(u, -74, -130, 1, 0.6, '3 3') +
    along(u, 0.6, (y, i) => [0.3 - Math.abs(y) * 0.7 - (i % 3) * 0.35, 1.2 - Math.abs(y) * 0.7]),
  cut: () => [
    [1.4, 0],
    [1.7, 0.1],
    [2.6, 0.14],
    [2.6, 0],
  ],
}

const slid: PrintKind = {
  off: 2,
  plan: (u) =>
    along(u, 0.9, (_, i) => [-7.6 + (i % 3) * 0.6, -1.6 - (i % 2) * 0.3]) +
    area(iron(u), { fill: 'paper', pen: 1.1 }) +
    frog(u, '2 2'),
  cut: () => [
    [-7.6, 0],
    [-7.2, 0.06],
    [-2.4, 0.1],
    [-2.2, 0.28],
    [2.6, 0.32],
    [2.6, 0],
  ],
}

const passedOver: PrintKind = {
  plan: (u) =>
    area(foot(u), { fill: 'stone', dash: '3 2' }) +
    inward(u, () => 0.14) +
    stroke(
      Array.from(
        { length: 13 },
        (_, i) => `M${n(-5.1 * u)} ${n((-3 + i * 0.5) * u)}H${n(5.1 * u)}`,
      ).join(''),
      { pen: 0.7 },
    ),
  cut: (d) => [
    [-2.2, 0],
    [-2.1, d * 0.8],
    [2.4, d * 0.9],
    [2.6, 0],
  ],
}

const full: PrintKind = {
  plan: (u) =>
    area(ring(u, 1.28, 0.06, 4), { fill: 'paper', pen: 0.9 }) +
    between(u, 1.22, 1.08) +
    area(foot(u), { fill: 'paper', pen: 1.6 }) +
    along(u, 0.8, (y, i) => [-1.9 + (i % 2) * 0.4, 1.9 - Math.abs(y) * 0.35 - (i % 3) * 0.5]),
  cut: (d) => [
    [-3.7, 0],
    [-3.2, -0.3],
    [-2.7, -0.36],
    [-2.3, -0.1],
    [-2.3, d + 0.3],
    [2.6, d + 0.35],
    [2.6, -0.1],
    [3, -0.38],
    [3.4, -0.3],
    [3.9, 0],
  ],
}

/** The kinds in the order of the table of what was found. */
export const printKinds = { even, crumbled, deep, hard, slid, passedOver, full } as const

export type PrintName = keyof typeof printKinds

/** What is drawn into the section of some kinds. `at` leads from inches to the picture. */
export function inCut(name: PrintName, u: number, [x, y]: Point): string {
  if (name === 'full')
    return (
      poly(
        [
          [x - 2.3 * u, y + 0.12 * u],
          [x + 2.6 * u, y + 0.12 * u],
        ],
        { pen: 0.9 },
      ) +
      stroke(
        `M${n(x - 1.8 * u)} ${n(y + 0.12 * u + 3)}h${n(1.3 * u)}m${n(0.4 * u)} 0h${n(1.3 * u)}`,
        { pen: 0.7 },
      )
    )
  if (name === 'crumbled') {
    const random = scatter(31)
    return dots(
      Array.from(
        { length: 12 },
        (): Point => [
          x + (random() > 0.5 ? 1 : -1) * (3.4 + random() * 1.4) * u,
          y - (0.12 + random() * 0.25) * u,
        ],
      ),
      0.9,
    )
  }
  if (name === 'passedOver')
    return stroke(
      Array.from(
        { length: 11 },
        (_, i) => `M${n(x + (-5 + i) * u)} ${n(y - 3.2)}v${n(3.2 + 0.24 * u)}`,
      ).join(''),
      { pen: 0.7 },
    )
  return ''
}
