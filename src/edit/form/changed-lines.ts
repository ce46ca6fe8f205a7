/** Lines that were taken out of a text and put in their place, with the number of the first. */
export type LineChange = {
  /** Number of the first line in the new text, 1-based. */
  readonly line: number
  readonly before: readonly string[]
  readonly after: readonly string[]
}

const linesOf = (text: string): readonly string[] => {
  const lines = text.replace(/^\uFEFF/, '').split(/\r?\n/)
  return lines.at(-1) === '' ? lines.slice(0, -1) : lines
}

/** For each pair of lines the number of lines that the rest of both texts have in common. */
function commonLengths(a: readonly string[], b: readonly string[]): readonly Uint16Array[] {
  const table = Array.from({ length: a.length + 1 }, () => new Uint16Array(b.length + 1))
  for (let i = a.length - 1; i >= 0; i--)
    for (let j = b.length - 1; j >= 0; j--) {
      const row = table[i] as Uint16Array
      const below = table[i + 1] as Uint16Array
      row[j] = a[i] === b[j] ? (below[j + 1] ?? 0) + 1 : Math.max(below[j] ?? 0, row[j + 1] ?? 0)
    }
  return table
}

/** Which lines differ between two texts, in their order. */
export function changedLines(before: string, after: string): readonly LineChange[] {
  const [a, b] = [linesOf(before), linesOf(after)]
  const common = commonLengths(a, b)
  const length = (i: number, j: number): number => common[i]?.[j] ?? 0
  const changes: LineChange[] = []
  let [i, j] = [0, 0]
  while (i < a.length || j < b.length) {
    if (i < a.length && j < b.length && a[i] === b[j]) {
      i++
      j++
      continue
    }
    const [from, to] = [i, j]
    while ((i < a.length || j < b.length) && !(i < a.length && j < b.length && a[i] === b[j])) {
      if (j >= b.length || (i < a.length && length(i + 1, j) >= length(i, j + 1))) i++
      else j++
    }
    changes.push({ line: to + 1, before: a.slice(from, i), after: b.slice(to, j) })
  }
  return changes
}
