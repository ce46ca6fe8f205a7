const marks = /^\/\S+ *<< *\/MCID (\d+) *>> *BDC$/
const says = /(?:Tj|TJ|'|"|Do|sh)$/

/**
 * Rules and backgrounds are tagged by the browser as if they were content of the box they belong
 * to. What shows neither words nor pictures is made an artifact.
 * @param content Of a page as the browser writes it, one operator a line.
 * @param isKept True for numbers of marked content that says something without words, such as parts
 * of a drawing.
 * @returns the new content, and the numbers that are no longer in it.
 */
export function unmarkDecoration(
  content: string,
  isKept: (mcid: number) => boolean,
): { readonly content: string; readonly removed: readonly number[] } {
  const lines = content.split('\n')
  const removed: number[] = []
  for (let i = 0; i < lines.length; i++) {
    const found = marks.exec(lines[i] ?? '')
    if (!found) continue
    let end = i + 1
    while (
      end < lines.length &&
      !/(?:EMC|BDC|BMC)$/.test(lines[end] ?? '') &&
      !says.test(lines[end] ?? '')
    )
      end++
    const mcid = Number(found[1])
    if (lines[end] !== 'EMC' || isKept(mcid)) continue
    lines[i] = '/Artifact BMC'
    removed.push(mcid)
  }
  return { content: lines.join('\n'), removed }
}
