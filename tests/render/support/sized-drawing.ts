import { widthOf } from '../../../src/render/drawings/letters.ts'

type Placed = {
  readonly said: string
  readonly size: number
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

const plain = (said: string): string =>
  said.replaceAll('&#39;', "'").replaceAll('&quot;', '"').replaceAll('&amp;', '&')

/** How far all of a drawing is moved down, where it is laid out around a middle of its own. */
const shiftOf = (svg: string): number =>
  Number(/^<svg [^>]*><g transform="translate\(0 (-?[\d.]+)\)">/.exec(svg)?.[1] ?? 0)

/** Every text of a drawing that is laid out in points, with the room that it takes at the most. */
export const textsOf = (svg: string): readonly Placed[] =>
  [
    ...svg.matchAll(
      /<text x="([^"]+)" y="([^"]+)" text-anchor="(\w+)" font-size="([^"]+)"([^>]*)>([^<]*)<\/text>/g,
    ),
  ].map((m) => {
    const [x, y, size] = [Number(m[1]), Number(m[2]) + shiftOf(svg), Number(m[4])]
    const said = plain(m[6] ?? '')
    // The condensed face is a fifth narrower at the least.
    const face = m[5]?.includes('Barlow Condensed') ? 0.8 : 1
    const wide = face * widthOf(said, size, m[5]?.includes('font-weight'))
    const left = m[3] === 'start' ? x : m[3] === 'end' ? x - wide : x - wide / 2
    // Figures have no descenders, and are as high as capitals.
    const [up, down] = /^[\d–]+$/.test(said) ? [0.67, 0] : [0.74, 0.2]
    return { said, size, left, right: left + wide, top: y - size * up, bottom: y + size * down }
  })

/**
 * Texts that are printed under 8 points, out of the drawing, or on another.
 * @param room Width of the narrowest place in which the drawing is printed, points.
 */
export function faultsOf(svg: string, room: number): readonly string[] {
  const [width = 0, height = 0] = (/viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [])
    .slice(1)
    .map(Number)
  const texts = textsOf(svg)
  return texts.flatMap((a, i) => [
    ...(a.size * Math.min(1, room / width) < 8 ? [`small: ${a.said}`] : []),
    ...(a.left < -0.5 || a.right > width + 0.5 || a.top < -0.5 || a.bottom > height + 0.5
      ? [`outside: ${a.said}`]
      : []),
    ...texts
      .slice(i + 1)
      .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `${a.said} lies on ${b.said}`),
  ])
}
