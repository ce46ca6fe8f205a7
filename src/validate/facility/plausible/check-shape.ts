import { radiusFrom, straightFrom } from '../../../model/oval-shape.ts'
import type { Problem } from '../../../model/problem.ts'
import type { UnitSystem } from '../../../model/quantity/kinds.ts'
import { foot, mile } from '../../../model/quantity/units.ts'
import { inBothUnits } from '../../in-both-units.ts'
import { smallestRadius, statedShape } from '../check-oval.ts'
import type { ParsedFacility } from '../parsed-facility.ts'
import { statedAt, written } from './valued.ts'

/** Laps that programs are written for, m: parts of a mile, and whole hundreds of meters. */
const laps = [
  ...[1 / 3, 0.4, 1 / 2, 5 / 8, 3 / 4, 7 / 8, 1].map((part) => part * mile),
  ...[500, 600, 800, 1000, 1200, 1400, 1600],
]

/** A lap may be this share off a usual one: a tape is no better where lap is worked out. */
const off = 0.015

/** Length of a straight against that of a turn: rounder or longer ovals are hardly built. */
const proportion = [0.5, 1.25] as const

/** Turns and straights are about as wide. */
const widest = 1.6

const saidIn = (units: UnitSystem) => (m: number) =>
  inBothUnits(units, {
    us: `${Math.round(m / foot).toLocaleString('en-US')} ft`,
    metric: `${Math.round(m)} m`,
  })

type Shape = {
  readonly lap: number
  readonly straight: number
  readonly key: 'lap' | 'straight' | 'radius'
}

/** The oval as its file states it; undefined where too little is stated or nothing closes. */
function shapeOf({ file }: ParsedFacility): Shape | undefined {
  const { lap, straight, radius, offset } = statedShape(file)
  if (lap !== undefined && straight !== undefined)
    return radiusFrom(lap, straight, offset) >= smallestRadius
      ? { lap, straight, key: 'straight' }
      : undefined
  if (radius === undefined) return undefined
  if (lap !== undefined) {
    const between = straightFrom(lap, radius, offset)
    return between >= smallestRadius ? { lap, straight: between, key: 'radius' } : undefined
  }
  return straight === undefined
    ? undefined
    : { lap: 2 * straight + 2 * Math.PI * (radius + offset), straight, key: 'radius' }
}

function ovalProblems(parsed: ParsedFacility): Problem[] {
  const shape = shapeOf(parsed)
  if (!shape) return []
  const { lap, straight, key } = shape
  const warn = (at: string, message: string, hint: string) =>
    parsed.tree.problem(parsed.tree.placeOf(['oval', at]), 'facility/odd', message, {
      hint,
      severity: 'warning',
    })
  const turn = lap / 2 - straight
  const said = saidIn(parsed.file.units)
  const [least, most] = proportion
  const nearest = laps.toSorted((a, b) => Math.abs(a - lap) - Math.abs(b - lap))[0] ?? lap
  return [
    ...(Math.abs(nearest - lap) > off * nearest
      ? [
          warn(
            statedAt(parsed, ['oval', 'lap']) ? 'lap' : key,
            `a lap of ${said(lap)} is none that programs are written for; the nearest is ${said(nearest)}`,
            'are the units right? where it is so, leave it',
          ),
        ]
      : []),
    ...(straight < least * turn || straight > most * turn
      ? [
          warn(
            key,
            `straights of ${said(straight)} against turns of ${said(turn)}: hardly an oval is built so`,
            'measure again, or look for a digit that is wrong; where it is so, leave it',
          ),
        ]
      : []),
  ]
}

function widths(parsed: ParsedFacility): Problem[] {
  const at = (key: string) => ['oval', 'width', key]
  const [straights, turns] = [statedAt(parsed, at('straights')), statedAt(parsed, at('turns'))]
  if (!straights || !turns) return []
  const ratio = turns.si / straights.si
  if (ratio <= widest && ratio >= 1 / widest) return []
  return [
    parsed.tree.problem(
      parsed.tree.placeOf(at('turns')),
      'facility/odd',
      `turns ${written(parsed, at('turns'))} wide and straights ${written(parsed, at('straights'))} wide do not fit each other`,
      { hint: 'are the units right?', severity: 'warning' },
    ),
  ]
}

/** Pylons stand closer where horses turn. */
function pylons(parsed: ParsedFacility): Problem[] {
  const at = (key: string) => ['oval', 'pylons', key]
  const [straights, turns] = [statedAt(parsed, at('straights')), statedAt(parsed, at('turns'))]
  if (!straights || !turns || turns.si <= straights.si) return []
  return [
    parsed.tree.problem(
      parsed.tree.placeOf(at('turns')),
      'facility/odd',
      `pylons are ${written(parsed, at('turns'))} apart in turns and only ${written(parsed, at('straights'))} on straights`,
      { hint: 'have the two changed places?', severity: 'warning' },
    ),
  ]
}

/** The oval is like others. Common practice, no source. */
export const checkShape = (parsed: ParsedFacility): Problem[] => [
  ...ovalProblems(parsed),
  ...widths(parsed),
  ...pylons(parsed),
]
