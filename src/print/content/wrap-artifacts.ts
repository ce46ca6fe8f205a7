import { beginsMarked, mayMark, operatorOf } from './operator.ts'

const paint = new Set(['f', 'F', 'f*', 'S', 's', 'B', 'B*', 'b', 'b*', 'n'])
const shape = new Set(['m', 'l', 'c', 'v', 'y', 'h', 're', 'W', 'W*'])

/**
 * Wraps everything that is painted outside any tag (rules, backgrounds, running heads) as an
 * artifact, so that readers for the blind pass it over.
 * @param content Of a page as the browser writes it: lines of one operator each.
 */
export function wrapArtifacts(content: readonly string[]): readonly string[] {
  const out: string[] = []
  let depth = 0
  let held: string[] = []
  let holding: 'text' | 'path' | undefined
  const close = (wrap: boolean): void => {
    out.push(...(wrap ? ['/Artifact BMC', ...held, 'EMC'] : held))
    held = []
    holding = undefined
  }
  for (const line of content) {
    if (depth > 0 && !mayMark(line)) {
      out.push(line)
      continue
    }
    const operator = operatorOf(line)
    if (beginsMarked(operator)) depth++
    if (operator === 'EMC') depth--
    if (depth > 0 || operator === 'EMC') {
      out.push(line)
      continue
    }
    if (holding) {
      held.push(line)
      if (holding === 'text' && operator === 'ET') close(true)
      // A path that only clips paints nothing.
      else if (holding === 'path' && paint.has(operator)) close(operator !== 'n')
      continue
    }
    if (operator === 'BT' || shape.has(operator)) {
      holding = operator === 'BT' ? 'text' : 'path'
      held = [line]
    } else if (operator === 'Do' || operator === 'sh') out.push('/Artifact BMC', line, 'EMC')
    else out.push(line)
  }
  return [...out, ...held]
}
