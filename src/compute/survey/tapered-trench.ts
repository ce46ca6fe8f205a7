import { notNegative } from '../materials/guards.ts'

/** Lengths of a trench of wedge section that ends in slopes, m, ≥ 0. */
export type TaperedTrench = {
  /** Width at the top. */
  readonly width: number
  /** Depth. */
  readonly depth: number
  /** Length. */
  readonly length: number
  /** Section of the corner pyramid that is left standing: base and rise. */
  readonly corner: { readonly base: number; readonly rise: number }
  /** Sloped end that is left standing: its length, and by how much it narrows to either side. */
  readonly end: { readonly length: number; readonly narrowing: number }
}

/**
 * Volume that comes out of a V-shaped trench, with what stays in at its ends taken off: full wedge,
 * less a pyramid, less the sloped end (a wedge less two pyramids).
 * @returns m³ of each part and of what is removed, not rounded.
 * @throws RangeError when a length is below zero, or more stays in than the wedge holds.
 * @see geometry
 */
export function taperedTrench({ width, depth, length, corner, end }: TaperedTrench): {
  wedge: number
  pyramid: number
  slope: number
  removed: number
} {
  const wedge =
    (notNegative('width', width) * notNegative('depth', depth) * notNegative('length', length)) / 2
  const pyramid =
    (notNegative('corner', corner.base) * notNegative('rise', corner.rise) * length) / 3
  const slope =
    (notNegative('end', end.length) * length * width) / 2 -
    2 * ((notNegative('narrowing', end.narrowing) * end.length * length) / 3)
  return { wedge, pyramid, slope, removed: notNegative('what is removed', wedge - pyramid - slope) }
}
