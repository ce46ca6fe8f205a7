import { factSpec } from '../../model/fact-spec.ts'
import { radiusFrom, straightFrom } from '../../model/oval-shape.ts'
import type { Problem } from '../../model/problem.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import type { Quantity } from '../../model/quantity/read-quantity.ts'
import { foot } from '../../model/quantity/units.ts'
import { usualValue } from '../../model/usual-value.ts'
import { inBothUnits } from '../in-both-units.ts'
import type { FacilityFile } from '../schemas/facility.ts'
import type { ParsedFacility } from './parsed-facility.ts'

/** What a file states of the shape, m. */
export type StatedShape = {
  readonly lap: number | undefined
  readonly straight: number | undefined
  readonly radius: number | undefined
  readonly offset: number
}

/** The shape as a file states it. */
export function statedShape({ oval, cushion, units }: FacilityFile): StatedShape {
  const si = (key: string): number | undefined =>
    (oval as Readonly<Record<string, Quantity | undefined>>)[key]?.si
  return {
    lap: si('lap'),
    straight: si('straight'),
    radius: si('radius'),
    offset:
      si('measuring-offset') ??
      usualValue(factSpec('oval.measuring-offset')?.typical(cushion.material), units),
  }
}

/** No turn is tighter, m. */
export const smallestRadius = 15

/** A stated radius may differ from that of lap and straight by this part of it. */
const closing = 0.005

const closes =
  'a lap is two straights and two turns: lap = 2 × straight + 2π × (radius + measuring offset)'

/** What cannot be, at the entry that is the first to look at. */
type Impossible = {
  readonly key: 'straight' | 'radius'
  readonly message: string
  readonly hint: string
}

function fromStraight(
  lap: number,
  straight: number,
  given: StatedShape,
  units: UnitSystem,
): Impossible | undefined {
  const found = radiusFrom(lap, straight, given.offset)
  if (found < smallestRadius)
    return {
      key: 'straight',
      message: 'two straights of this length leave no room for the turns in this lap',
      hint: closes,
    }
  if (given.radius === undefined || Math.abs(found - given.radius) <= closing * given.radius)
    return undefined
  return {
    key: 'radius',
    message: `lap and straight ask for a turn radius of ${inBothUnits(units, {
      us: `${(found / foot).toFixed(1)} ft`,
      metric: `${found.toFixed(2)} m`,
    })} at the rail`,
    hint: 'leave out the least sure of the three, or measure again',
  }
}

function impossible(given: StatedShape, units: UnitSystem): Impossible | undefined {
  const { lap, straight, radius, offset } = given
  if (lap === undefined) return undefined
  if (straight !== undefined) return fromStraight(lap, straight, given, units)
  return radius !== undefined && straightFrom(lap, radius, offset) < smallestRadius
    ? {
        key: 'radius',
        message: 'turns of this radius leave no room for straights in this lap',
        hint: closes,
      }
    : undefined
}

/** An oval needs two of lap, straight and radius, and they must close. */
export function checkOval({ file, tree }: ParsedFacility): Problem[] {
  const given = statedShape(file)
  const known = [given.lap, given.straight, given.radius].filter((x) => x !== undefined)
  if (known.length < 2)
    return [
      tree.problem(
        tree.keyPlaceOf(['oval']),
        'oval/too-little',
        'the shape of the oval is not known',
        { hint: 'give two of: lap, straight, radius' },
      ),
    ]
  const fault = impossible(given, file.units)
  if (!fault) return []
  const { key, message, hint } = fault
  return [tree.problem(tree.placeOf(['oval', key]), 'oval/impossible', message, { hint })]
}
