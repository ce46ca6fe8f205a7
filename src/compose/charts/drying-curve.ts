import { depletionAfter } from '../../compute/weather/layer-drying.ts'
import { wetSurface } from '../../compute/weather/wet-surface.ts'
import type { DryingCurve } from '../../model/manual/charts.ts'
import type { ComposeContext } from '../context.ts'

/** How many steps the drying curve is drawn in. */
const steps = 48

/**
 * The drying of the cushion, a little beyond the day on which it dusts; by the same law as its
 * worksheet.
 */
export function composeDryingCurve({ engine }: ComposeContext): DryingCurve | undefined {
  const x = engine.siOfAll({
    workable: 'layer-dry.workable',
    toDust: 'layer-dry.dust',
    total: 'layer-dry.total',
    readily: 'layer-dry.readily',
    rate: 'air.rate',
    depth: 'cushion.depth.target',
    unitWeight: 'cushion.unit-weight.worked',
    held: 'cushion.moisture.held',
    target: 'cushion.moisture.target',
    dusty: 'cushion.moisture.dusty',
  })
  if (!x) return undefined
  const dust = x.workable + x.toDust
  const moistureAt = (time: number): number =>
    x.held -
    (depletionAfter(0, x.total, x.readily, wetSurface * x.rate, time) * 1000) /
      (x.unitWeight * x.depth)
  const points = Array.from({ length: steps + 1 }, (_, i) => {
    const time = (1.1 * dust * i) / steps
    return { time, moisture: moistureAt(time) }
  })
  const { held, target, dusty, workable } = x
  return { points, held, target, dusty, workable, dust }
}
