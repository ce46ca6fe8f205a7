const [space, letterC] = [32, 67]

/**
 * The operator that ends a line of page content, which the browser writes one a line; it may follow
 * `>>` without a space.
 */
export function operatorOf(line: string): string {
  let end = line.length
  while (end > 0 && line.charCodeAt(end - 1) <= space) end--
  let start = end
  while (start > 0 && line.charCodeAt(start - 1) > space) start--
  return line.slice(start, end)
}

/** Whether an operator begins marked content. */
export const beginsMarked = (operator: string): boolean =>
  operator.endsWith('BDC') || operator.endsWith('BMC')

/** Whether a line may begin or end marked content: a quick look, since most lines do not. */
export function mayMark(line: string): boolean {
  const last = line.charCodeAt(line.length - 1)
  return last === letterC || last <= space
}
