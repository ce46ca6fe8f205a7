/** A grid of inputs, row by row. */
type Rows = readonly (readonly HTMLInputElement[])[]

const steps: Readonly<Record<string, readonly [row: number, column: number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
}

function placeOf(rows: Rows, target: EventTarget | null): readonly [number, number] | undefined {
  if (!(target instanceof HTMLInputElement)) return undefined
  const row = rows.findIndex((inputs) => inputs.includes(target))
  return row === -1 ? undefined : [row, rows[row]?.indexOf(target) ?? -1]
}

/** The input that comes after one: outward, then at the next station. */
function after(rows: Rows, [row, column]: readonly [number, number]): HTMLInputElement | undefined {
  return rows[row]?.[column + 1] ?? rows[row + 1]?.[0]
}

/**
 * Enter goes on to the next place as Tab does; the arrows up and down keep the line across. What
 * stands in several cells of a spreadsheet is pasted into as many.
 * @param end What comes after the last place.
 */
export function followKeys(node: HTMLElement, rows: Rows, end: HTMLElement): void {
  node.addEventListener('keydown', (event) => {
    const at = placeOf(rows, event.target)
    if (!at || event.isComposing) return
    const step = steps[event.key]
    const next =
      event.key === 'Enter'
        ? (after(rows, at) ?? end)
        : step && rows[at[0] + step[0]]?.[at[1] + step[1]]
    if (!next) return
    event.preventDefault()
    next.focus()
  })
  node.addEventListener('paste', (event) => {
    const at = placeOf(rows, event.target)
    const text = event.clipboardData?.getData('text/plain') ?? ''
    const block = text
      .replace(/\r?\n$/, '')
      .split(/\r?\n/)
      .map((line) => line.split('\t'))
    if (!at || (block.length === 1 && block[0]?.length === 1)) return
    event.preventDefault()
    for (const [r, line] of block.entries())
      for (const [c, typed] of line.entries()) {
        const input = rows[at[0] + r]?.[at[1] + c]
        if (!input) continue
        input.value = typed.trim()
        input.dispatchEvent(new Event('input', { bubbles: true }))
        input.dispatchEvent(new Event('change', { bubbles: true }))
      }
  })
}
