import type { Capability } from '../../model/capability.ts'
import type { FactPath, GearField } from '../../model/fact-spec.ts'
import { coverage } from '../coverage/coverage.ts'
import { rolling } from '../coverage/rolling.ts'
import { strip } from './oval.ts'
import type { ReasonId } from './reasons.ts'
import { type Binding, fact, fixed, type Use, use } from './use.ts'

type WorkId =
  | 'grade'
  | 'grade-band'
  | 'draw-in'
  | 'harrow'
  | 'screen'
  | 'drum'
  | 'condition'
  | 'spray'

/** One way of covering the track: which machine, and which of its widths works. */
type Work = {
  readonly id: WorkId
  readonly can: Capability
  readonly width?: GearField
  readonly band?: FactPath
  /** Passes that the work itself asks for, whatever its machine usually makes. */
  readonly twice?: ReasonId
}

const works: readonly Work[] = [
  { id: 'grade', can: 'grade' },
  { id: 'grade-band', can: 'draw', band: 'practice.grade.band' },
  { id: 'draw-in', can: 'harrow', band: 'practice.grade.band', twice: 'draw-then-blend' },
  { id: 'harrow', can: 'harrow' },
  { id: 'screen', can: 'screen' },
  { id: 'drum', can: 'roll-drum' },
  { id: 'condition', can: 'condition' },
  { id: 'spray', can: 'spray', width: 'spray-width' },
]

function working(known: ReadonlySet<string>, { id, can, width, band, twice }: Work): Use {
  const gear = (field: GearField): Binding => fact(`gear.${can}.${field}`)
  const or = (field: GearField, why: ReasonId): Binding =>
    known.has(`gear.${can}.${field}`) ? gear(field) : fixed(0, why)
  return use(id, coverage, {
    ...strip,
    ...(band === undefined ? {} : { widthStraights: fact(band), widthTurns: fact(band) }),
    width: gear(width ?? 'width'),
    angle: or('blade-angle', 'square-to-travel'),
    overlap: or('overlap', 'edge-to-edge'),
    speed: gear('speed'),
    efficiency: gear('efficiency'),
    machines: gear('count'),
    passes: twice === undefined ? gear('passes') : fixed(2, twice),
  })
}

/**
 * Laps, distance and time of every implement that the facility has.
 * @param known Paths of the facts that the facility has.
 */
export function workingUses(known: ReadonlySet<string>): readonly Use[] {
  const uses = works
    .filter(({ can, width }) => known.has(`gear.${can}.${width ?? 'width'}`))
    .map((work) => working(known, work))
  if (!known.has('gear.roll-tires.tire-width')) return uses
  const truck = (field: GearField): Binding => fact(`gear.roll-tires.${field}`)
  const roll = use('roll', rolling, {
    ...strip,
    tireWidth: truck('tire-width'),
    tiresPerSide: truck('tires-per-side'),
    gap: truck('tire-gap'),
    track: truck('tire-track'),
    overlap: truck('tire-overlap'),
    speed: truck('speed'),
    efficiency: truck('efficiency'),
    machines: truck('count'),
    passes: truck('passes'),
  })
  return [...uses, roll]
}
