/** Width of a letter against the size of its type: a little more than the mean. */
const letter = 0.5

/** Room that words take at the most. */
export const widthOf = (words: string, size: number): number => words.length * letter * size

/** Words on lines no wider than `width`; a single word stays whole. */
export function linesOf(words: string, width: number, size: number): readonly string[] {
  const lines: string[] = []
  for (const word of words.split(' ')) {
    const last = lines.at(-1)
    const longer = `${last} ${word}`
    if (last === undefined || widthOf(longer, size) > width) lines.push(word)
    else lines[lines.length - 1] = longer
  }
  return lines
}
