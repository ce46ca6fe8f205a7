import { positive } from '../materials/guards.ts'

/** Earth to take away and to bring, m³; they are never set off against each other within a cell. */
export type CutFill = { readonly cut: number; readonly fill: number }

/**
 * Volume of one grid cell: mean of its corner depths by its area.
 * @param corners Cut at each corner, m; fill is below zero. At least three.
 * @param area Of the cell, m², above 0.
 * @returns m³, not rounded.
 * @throws RangeError with too few corners or no area.
 * @see geometry
 */
export function cellVolume(corners: readonly number[], area: number): number {
  if (corners.length < 3) throw new RangeError('a cell has at least three corners')
  return (corners.reduce((sum, h) => sum + h, 0) / corners.length) * positive('area', area)
}

/**
 * Cut and fill of a whole grid of stations × lines.
 * @param depths Cut at each grid point, m; fill is below zero. Rows are stations, columns lines;
 * all rows alike long.
 * @param area Area of one cell, m², above 0.
 * @returns Cut and fill, m³; a cell counts as what its mean is.
 * @throws RangeError unless the grid has at least two rows and two columns of the same length.
 * @see geometry
 */
export function gridVolume(depths: readonly (readonly number[])[], area: number): CutFill {
  const columns = depths[0]?.length ?? 0
  if (depths.length < 2 || columns < 2 || depths.some((row) => row.length !== columns))
    throw new RangeError('a grid has at least two full rows and columns')
  let cut = 0
  let fill = 0
  for (let i = 1; i < depths.length; i++) {
    for (let j = 1; j < columns; j++) {
      const corners = [
        depths[i - 1]?.[j - 1],
        depths[i - 1]?.[j],
        depths[i]?.[j - 1],
        depths[i]?.[j],
      ].map((h) => h ?? 0)
      const volume = cellVolume(corners, area)
      if (volume > 0) cut += volume
      else fill -= volume
    }
  }
  return { cut, fill }
}
