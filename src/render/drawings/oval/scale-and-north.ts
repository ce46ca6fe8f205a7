import type { OvalGeometry } from '../../../model/manual/geometry.ts'
import { foot } from '../../../model/quantity/units.ts'
import { arrow, line, type Point } from '../ink.ts'
import { say } from '../letters.ts'
import type { Detail } from './detail.ts'
import type { PlanFrame } from './frame.ts'

/** A round length for the scale bar, about a sixth of the oval. */
export function scaleBar({ g, k }: PlanFrame, at: Point, { size }: Detail, feet: boolean): string {
  const unit = feet ? foot : 1
  const rough = (g.straight + 2 * g.radius) / 6 / unit
  const round = [10, 20, 50, 100, 200, 250, 500, 1000].filter((x) => x <= rough).at(-1) ?? 10
  const w = round * unit * k
  return (
    line(at, [at[0] + w, at[1]], { pen: 1.6 }) +
    [0, w]
      .map((dx) => line([at[0] + dx, at[1] - 2.6], [at[0] + dx, at[1] + 2.6], { pen: 0.8 }))
      .join('') +
    say([at[0] + w / 2, at[1] - 4.6], `${round} ${feet ? 'ft' : 'm'}`, { anchor: 'middle', size })
  )
}

/**
 * An arrow to true north, where it is known; the home straight is drawn level, horses running to the
 * right (to the left where they run clockwise).
 */
export function northArrow(g: OvalGeometry, [x, y]: Point, size: number, label: string): string {
  if (g.homeBearing === undefined) return ''
  const angle = (g.direction === 'clockwise' ? Math.PI : 0) - (g.homeBearing * Math.PI) / 180
  const [dx, dy] = [Math.cos(angle) * 10, Math.sin(angle) * 10]
  return (
    arrow([x - dx, y - dy], [x + dx, y + dy], { pen: 0.8 }) +
    say([x + dx * 1.75, y + dy * 1.75 + size * 0.36], label, { anchor: 'middle', size, bold: true })
  )
}
