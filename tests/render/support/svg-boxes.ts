import type { DrawingName } from '../../../src/render/drawings/drawings.ts'

export const chartNames: readonly DrawingName[] = [
  'water-months',
  'heat-index',
  'race-interval',
  'drying',
]

/** Attributes of all boxes of one class. */
export const boxes = (
  svg: string,
  name: string,
): { x: number; y: number; width: number; height: number }[] =>
  [...svg.matchAll(/<rect ([^>]*)>/g)]
    .map((m) => m[1] ?? '')
    .filter((a) => new RegExp(`class="${name}"`).test(a))
    .map((a) => {
      const value = (key: string): number => Number(new RegExp(`\\b${key}="([^"]+)"`).exec(a)?.[1])
      return { x: value('x'), y: value('y'), width: value('width'), height: value('height') }
    })

/**
 * Room that a text takes at the most, judged by its letters: no letter of the face in use is wider
 * on average.
 */
function textBoxes(
  svg: string,
): { words: string; left: number; right: number; top: number; bottom: number }[] {
  return [
    ...svg.matchAll(
      /<text x="([^"]+)" y="([^"]+)" text-anchor="(\w+)" font-size="([^"]+)"[^>]*>([^<]*)<\/text>/g,
    ),
  ].map((m) => {
    const [x, y, size] = [Number(m[1]), Number(m[2]), Number(m[4])]
    const words = m[5] ?? ''
    const wide = words.length * size * 0.5
    const left = m[3] === 'start' ? x : m[3] === 'end' ? x - wide : x - wide / 2
    return { words, left, right: left + wide, top: y - size, bottom: y + size * 0.25 }
  })
}

/** Texts that reach out of the view box. */
export function textsOutside(svg: string): readonly string[] {
  const [width = 0, height = 0] = (/viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [])
    .slice(1)
    .map(Number)
  return textBoxes(svg)
    .filter((t) => t.left < 0 || t.right > width || t.top < 0 || t.bottom > height)
    .map((t) => t.words)
}
