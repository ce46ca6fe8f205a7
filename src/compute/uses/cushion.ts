import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { inch } from '../../model/quantity/units.ts'
import { cushionMass } from '../cushion/cushion-mass.ts'
import { layerOrder, layerOrderUnpriced } from '../cushion/layer-order.ts'
import { surveyReadings } from '../cushion/survey-readings.ts'
import { fact, figure, fixed, type Use, use } from './use.ts'

/**
 * The cushion as a whole, and what one small step of its depth takes.
 * @param known Paths of the facts that the facility has.
 * @param system Decides whether the step is a quarter inch or 5 mm.
 */
export function cushionUses(known: ReadonlySet<string>, system: UnitSystem): readonly Use[] {
  const area = figure('area.total')
  const unitWeight = fact('cushion.unit-weight.worked')
  const layer = {
    area,
    depth:
      system === 'us' ? fixed(0.25 * inch, 'a quarter inch') : fixed(0.005, 'five millimeters'),
    unitWeight,
    load: fact('delivery.load'),
  }
  const title = {
    title:
      system === 'us'
        ? 'What a quarter inch takes over the whole track'
        : 'What 5 mm take over the whole track',
  }
  return [
    use(10, 'cushion', cushionMass, { area, depth: fact('cushion.depth.target'), unitWeight }),
    known.has('prices.material')
      ? use(11, 'quarter', layerOrder, { ...layer, price: fact('prices.material') }, title)
      : use(11, 'quarter', layerOrderUnpriced, layer, title),
    use(12, 'survey', surveyReadings, {
      stations: fact('practice.survey.stations'),
      lines: fact('practice.survey.lines'),
    }),
  ]
}
