/** Long enough that its rounding is nothing, CSS pixels. */
const ruler = 1000

/** Measures a box, CSS pixels. */
function boxOf(style: Readonly<Record<string, string>>): { width: number; height: number } {
  const probe = document.createElement('div')
  for (const [name, value] of Object.entries(style)) probe.style.setProperty(name, value)
  document.body.append(probe)
  const { width, height } = probe.getBoundingClientRect()
  probe.remove()
  return { width, height }
}

/**
 * Has everything laid out in pixels as large as those of paper, whatever the screen and however much
 * the reader has enlarged the page: lines are as wide as whole pixels of the screen, and pages would
 * break elsewhere. On paper the thinnest line is one CSS pixel wide.
 * @returns what is measured of a CSS pixel.
 */
export function layAsOnPaper(): number {
  const thinnest = boxOf({ 'border-top': '0.01px solid' }).height
  const style = document.createElement('style')
  style.textContent = `@media screen{html{zoom:${thinnest};--enlarged:${1 / thinnest}}}`
  document.body.append(style)
  return boxOf({ width: `${ruler}px` }).width / ruler
}
