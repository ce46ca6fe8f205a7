import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { inch } from '../../model/quantity/units.ts'
import { cushionMass } from '../cushion/cushion-mass.ts'
import { layerOrder, layerOrderUnpriced } from '../cushion/layer-order.ts'
import { surveyReadings } from '../cushion/survey-readings.ts'
import { stonePile } from '../materials/stone-pile.ts'
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
    depth: fixed(system === 'us' ? 0.25 * inch : 0.005, 'one-step-deep'),
    unitWeight,
    moisture: fact('delivery.moisture'),
    load: fact('delivery.load'),
  }
  return [
    use('cushion', cushionMass, { area, depth: fact('cushion.depth.target'), unitWeight }),
    known.has('prices.material')
      ? use('quarter', layerOrder, { ...layer, price: fact('prices.material') })
      : use('quarter', layerOrderUnpriced, layer),
    use('pile', stonePile, {
      mass: figure('quarter.mass'),
      weight: fact('cushion.unit-weight.loose'),
      repose: fact('practice.repose'),
      width: fact('practice.pile-width'),
    }),
    use('survey', surveyReadings, {
      stations: fact('practice.survey.stations'),
      lines: fact('practice.survey.lines'),
    }),
  ]
}
