import { dots, type Point, stroke } from './ink.ts'

const n = (x: number): string => String(Math.round(x * 10) / 10)

/** Loose material: dots over a box, scattered by a fixed rule so that the bytes stay the same. */
export function grainsIn([x, y]: Point, [wide, high]: Point, every = 4, radius = 0.55): string {
  const points: Point[] = []
  for (let row = 0; (row + 0.5) * every < high; row++)
    for (let i = 0; (i + 0.5) * every < wide; i++) {
      const shift = (((i * 7 + row * 13) % 10) / 10 - 0.5) * every * 0.6
      const drop = (((i * 3 + row * 7) % 10) / 10 - 0.5) * every * 0.6
      points.push([
        Math.min(x + wide - 0.7, Math.max(x + 0.7, x + (i + 0.5) * every + shift)),
        Math.min(y + high - 0.7, Math.max(y + 0.7, y + (row + 0.5) * every + drop)),
      ])
    }
  return points.length === 0 ? '' : dots(points, radius)
}

/** Strokes that fill a box, rising to the right or falling: tells fields apart without colour. */
export function slanted(
  [x, y]: Point,
  [wide, high]: Point,
  every: number,
  { width = 0.7, falling = false } = {},
): string {
  const strokes: string[] = []
  for (let c = every / 2; c < wide + high; c += every) {
    const [from, to] = [Math.max(0, c - high), Math.min(wide, c)]
    const at = (along: number): string =>
      `${n(x + along)} ${n(falling ? y + high - (c - along) : y + (c - along))}`
    strokes.push(`M${at(from)}L${at(to)}`)
  }
  return stroke(strokes.join(''), { pen: width })
}
