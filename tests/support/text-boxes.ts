import type { Word } from './read-pdf.ts'

/**
 * A run of letters on a page, points from its lower left: from the baseline to the height of small
 * letters, where two lines never meet unless they lie on each other.
 */
export type TextBox = {
  readonly text: string
  readonly left: number
  readonly right: number
  readonly low: number
  readonly high: number
  readonly upright: boolean
}

/** How tall small letters are, as a share of the type size (between those of the faces used). */
const xHeight = 0.48

/** The words of a page as boxes. */
export function textBoxes(words: readonly Word[]): readonly TextBox[] {
  return words.flatMap(({ text, x, y, right, transform }) => {
    // The bar of a mean lies over its letter.
    if (text.trim() === '' || text === '‾') return []
    const [a = 0, b = 0] = transform
    const size = Math.hypot(a, b)
    const upright = Math.abs(b) < 1e-3 * size && a > 0
    // Of words that are turned only the place is known.
    return [
      { text, left: x, right: upright ? right : x, low: y, high: y + size * xHeight, upright },
    ]
  })
}

/** Pairs of words that lie on each other. */
export function overlaps(boxes: readonly TextBox[], slack = 0.6): readonly string[] {
  const level = boxes.filter((b) => b.upright).sort((p, q) => p.left - q.left)
  return level.flatMap((p, i) => {
    const found: string[] = []
    for (let j = i + 1; j < level.length; j++) {
      const q = level[j] as TextBox
      if (q.left > p.right - slack) break
      // Words with a light edge are painted twice, edge and ink.
      const isHalo =
        p.text === q.text && Math.abs(p.left - q.left) < slack && Math.abs(p.low - q.low) < slack
      if (!isHalo && Math.min(p.high, q.high) - Math.max(p.low, q.low) > slack)
        found.push(`“${p.text}” and “${q.text}”`)
    }
    return found
  })
}
