import { describe, expect, it } from 'vitest'
import type { Word } from './read-pdf.ts'
import { overlaps, textBoxes } from './text-boxes.ts'

/** A word of 12 points. */
const word = (text: string, x: number, y: number): Word => ({
  text,
  x,
  y,
  right: x + text.length * 5.5,
  transform: [12, 0, 0, 12, x, y],
})

/** Two words on a page, the second this far from the first. */
const found = (right: number, down: number): readonly string[] =>
  overlaps(textBoxes([word('harrow', 20, 100), word('water', 20 + right, 100 - down)]))

describe('words that lie on each other', () => {
  it('are found where they share letters’ height and width', () => {
    expect(found(15, 2)).toEqual(['“harrow” and “water”'])
  })

  it('are not seen in lines below or beside each other', () => {
    expect(found(0, 12)).toEqual([])
    expect(found(60, 0)).toEqual([])
  })
})
