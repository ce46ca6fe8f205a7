import { mayMark } from './operator.ts'

const marks = /^\/\S+ *<< *\/MCID (\d+) *>> *BDC$/
const begins = /(?:EMC|BDC|BMC)$/
const saying = ['Tj', 'TJ', "'", '"', 'Do', 'sh']

/** Whether marked content goes on behind a line without a word or a picture. */
const isPainted = (line: string): boolean =>
  !(mayMark(line) && begins.test(line)) && !saying.some((operator) => line.endsWith(operator))

/**
 * Rules and backgrounds are tagged by the browser as if they were content of the box they belong
 * to. What shows neither words nor pictures is made an artifact.
 * @param content Of a page as the browser writes it: lines of one operator each.
 * @param isKept True for numbers of marked content that says something without words, such as parts
 * of a drawing.
 * @returns the new content, and the numbers that are no longer in it.
 */
export function unmarkDecoration(
  content: readonly string[],
  isKept: (mcid: number) => boolean,
): { readonly content: readonly string[]; readonly removed: readonly number[] } {
  const lines = [...content]
  const removed: number[] = []
  for (let i = 0; i < lines.length; i++) {
    const line = lines[i] ?? ''
    const found = mayMark(line) ? marks.exec(line) : null
    if (!found) continue
    let end = i + 1
    while (end < lines.length && isPainted(lines[end] ?? '')) end++
    const mcid = Number(found[1])
    if (lines[end] !== 'EMC' || isKept(mcid)) continue
    lines[i] = '/Artifact BMC'
    removed.push(mcid)
  }
  return { content: lines, removed }
}
