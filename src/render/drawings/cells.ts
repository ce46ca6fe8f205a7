import type { Point } from './ink.ts'
import { lead, lines, wrapped } from './letters.ts'

/** A picture with its name and what there is to see in it. */
export type Cell = {
  /** Drawn with its left upper corner at a place. */
  readonly picture: (at: Point) => string
  /** In bold. */
  readonly name: string
  readonly says: string
  /** What follows, in bold, behind an arrow. */
  readonly act?: string
}

type Grid = {
  /** Of the drawing. */
  readonly width: number
  /** Of each picture. */
  readonly picture: Point
  readonly gap: number
  readonly top?: number
}

const [nameSize, saysSize] = [10.5, 8.6]

/** Room for the name, the words and what follows. */
function parts({ name, says, act }: Cell, width: number) {
  const named = wrapped(name, width, nameSize, true)
  const said = says === '' ? [] : wrapped(says, width, saysSize)
  const acts = act === undefined ? [] : wrapped(`→ ${act}`, width, saysSize, true)
  const second = nameSize + (named.length - 1) * lead(nameSize) + lead(saysSize) + 1
  const third = second + said.length * lead(saysSize) + 1
  return { named, said, acts, second, third, high: third + acts.length * lead(saysSize) - 4 }
}

function under(cell: Cell, [x, y]: Point, width: number): string {
  const { named, said, acts, second, third } = parts(cell, width)
  return (
    lines([x, y + nameSize], named, { size: nameSize, bold: true }) +
    lines([x, y + second], said, { size: saysSize }) +
    lines([x, y + third], acts, { size: saysSize, bold: true })
  )
}

/** Pictures in rows, as many beside each other as have room; each row as high as its words. */
export function cellGrid(
  cells: readonly Cell[],
  { width, picture: [wide, high], gap, top = 0 }: Grid,
): { readonly body: string; readonly height: number } {
  const across = Math.max(1, Math.min(cells.length, Math.floor((width + gap) / (wide + gap))))
  const pitch = (width + gap) / across
  const rows = Array.from({ length: Math.ceil(cells.length / across) }, (_, r) =>
    cells.slice(r * across, (r + 1) * across),
  )
  let y = top
  const body = rows.flatMap((row) => {
    const from = y
    y += high + Math.max(...row.map((cell) => parts(cell, pitch - gap).high)) + 9
    return row.map(
      (cell, i) =>
        cell.picture([i * pitch, from]) + under(cell, [i * pitch, from + high], pitch - gap),
    )
  })
  return { body: body.join(''), height: y - 7 }
}
