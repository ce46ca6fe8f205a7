import { creep } from '../pullback/creep.ts'
import { ridge } from '../pullback/ridge.ts'
import { ridgeWater } from '../pullback/ridge-water.ts'
import { strip } from './oval.ts'
import { fact, figure, type Use, use } from './use.ts'

/**
 * What creeps to the rail, and what a ridge there does. A ridge of the usual height is reckoned
 * where none was measured.
 * @param known Paths of the facts that the facility has.
 */
export function pullbackUses(known: ReadonlySet<string>): readonly Use[] {
  const water = {
    height: fact(known.has('rail-ridge.height') ? 'rail-ridge.height' : 'practice.rail-build-up'),
    straight: strip.straight,
    radius: strip.radius,
    crossFallStraights: fact('oval.cross-fall.straights'),
    crossFallTurns: fact('oval.cross-fall.turns'),
    widthStraights: strip.widthStraights,
  }
  const harrow = (['gear.harrow.width', 'gear.condition.width'] as const).find((path) =>
    known.has(path),
  )
  return [
    use('creep', creep, {
      rail: figure('rail.length'),
      area: figure('area.total'),
      width: fact('creep.width'),
      height: fact('creep.height'),
      unitWeight: fact('cushion.unit-weight.worked'),
      days: fact('practice.skipped'),
    }),
    harrow === undefined
      ? use('ridge', ridgeWater, water)
      : use('ridge', ridge, {
          ...water,
          harrowWidth: fact(harrow),
          teeth: fact('practice.harrow.depth'),
          print: fact('practice.print-depth'),
        }),
  ]
}
