import type { FactPath } from '../../model/fact-spec.ts'
import { foot } from '../../model/quantity/units.ts'
import { excess, excessHauled } from '../repairs/excess.ts'
import { gritBlend } from '../repairs/grit-blend.ts'
import { missingDepth, missingDepthUnpriced } from '../repairs/missing-depth.ts'
import { squareCut } from '../repairs/square-cut.ts'
import { type Binding, fact, figure, fixed, type Use, use } from './use.ts'

const area = figure('area.total')
const worked = fact('cushion.unit-weight.worked')
const looseWeight = fact('cushion.unit-weight.loose')
const target = fact('cushion.depth.target')
const load = fact('delivery.load')

const washout = (): Use =>
  use('washout', squareCut, {
    width: fact('practice.washout.width'),
    depth: fact('practice.washout.depth'),
    length: fact('practice.washout.length'),
    packedWeight: fact('cushion.unit-weight.compacted'),
    looseWeight,
    lift: fact('practice.washout.lift'),
    moisture: fact('cushion.moisture.target'),
    barrow: fact('practice.barrow'),
    thin: fact('practice.thin-layer'),
    people: fact('crew.people'),
    labor: fact('practice.washout.labor'),
  })

function deep(known: ReadonlySet<string>): Use {
  const or = (path: FactPath, otherwise: Binding): Binding =>
    known.has(path) ? fact(path) : otherwise
  const bindings = {
    area,
    found: fact('cushion.depth.found'),
    target,
    worked,
    looseWeight,
    edge: figure('outside.length'),
    repose: fact('practice.repose'),
    moisture: fact('cushion.moisture.target'),
    load: or('gear.haul.bed', load),
    grading: known.has('gear.grade.width') ? figure('grade.time') : fixed(0, 'no-blade'),
  }
  if (known.has('gear.haul.bed') && known.has('gear.load.bucket'))
    return use('deep', excessHauled, { ...bindings, rate: figure('haul.rate') })
  return use('deep', excess, {
    ...bindings,
    bucket: or('gear.load.bucket', fixed(27 * foot ** 3, 'rented-bucket')),
    bucketTime: fixed(60, 'bucket-a-minute'),
    loaders: or('gear.load.count', fixed(1, 'rented-loader')),
  })
}

function hard(known: ReadonlySet<string>): Use {
  const measured = known.has('cushion.depth.found')
  const bindings = {
    area,
    target: measured ? target : fact('practice.harrow.step'),
    found: measured ? fact('cushion.depth.found') : fixed(0, 'one-harrow-step'),
    unitWeight: worked,
    moisture: fact('delivery.moisture'),
    load,
    swell: fact('base.swell'),
  }
  return known.has('prices.material')
    ? use('hard', missingDepth, { ...bindings, price: fact('prices.material') })
    : use('hard', missingDepthUnpriced, bindings)
}

/**
 * Washouts, and a cushion that is too deep, too thin, or worn to powder.
 * @param known Paths of the facts that the facility has.
 */
export const repairUses = (known: ReadonlySet<string>): readonly Use[] => [
  washout(),
  deep(known),
  hard(known),
  use('grit', gritBlend, {
    cushion: figure('cushion.mass'),
    found: fact('cushion.grit.found'),
    target: fact('cushion.grit.target'),
    stone: fixed(1, 'clean-stone'),
    moisture: fact('delivery.moisture'),
    load,
  }),
]
