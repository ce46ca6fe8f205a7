import type { Capability } from '../../model/capability.ts'
import type { FactPath, GearField } from '../../model/fact-spec.ts'
import { coverage } from '../coverage/coverage.ts'
import { rolling } from '../coverage/rolling.ts'
import { strip } from './oval.ts'
import { type Binding, fact, fixed, type Use, use } from './use.ts'

type WorkId = 'grade' | 'grade-band' | 'harrow' | 'screen' | 'drum' | 'condition' | 'spray'

/** One way of covering the track: which machine, and which of its widths works. */
type Work = {
  readonly number: number
  readonly id: WorkId
  readonly can: Capability
  readonly what: string
  readonly width?: GearField
  readonly band?: FactPath
}

const works: readonly Work[] = [
  { number: 20, id: 'grade', can: 'grade', what: 'Grading the whole width' },
  {
    number: 21,
    id: 'grade-band',
    can: 'grade',
    what: 'Grading the strip next to the rail',
    band: 'practice.grade.band',
  },
  { number: 22, id: 'harrow', can: 'harrow', what: 'Harrowing the whole width' },
  { number: 23, id: 'screen', can: 'screen', what: 'Flattening the whole width with the screen' },
  { number: 25, id: 'drum', can: 'roll-drum', what: 'Rolling the whole width with a drum' },
  { number: 26, id: 'condition', can: 'condition', what: 'Conditioning the whole width' },
  {
    number: 27,
    id: 'spray',
    can: 'spray',
    what: 'Driving once over the whole width with the water truck',
    width: 'spray-width',
  },
]

function working(known: ReadonlySet<string>, { number, id, can, what, width, band }: Work): Use {
  const gear = (field: GearField): Binding => fact(`gear.${can}.${field}`)
  const or = (field: GearField, why: string): Binding =>
    known.has(`gear.${can}.${field}`) ? gear(field) : fixed(0, why)
  return use(
    number,
    id,
    coverage,
    {
      ...strip,
      ...(band === undefined ? {} : { widthStraights: fact(band), widthTurns: fact(band) }),
      width: gear(width ?? 'width'),
      angle: or('blade-angle', 'drawn square to travel'),
      overlap: or('overlap', 'strips laid edge to edge'),
      speed: gear('speed'),
      efficiency: gear('efficiency'),
      machines: gear('count'),
      passes: gear('passes'),
    },
    { title: what },
  )
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
  const roll = use(24, 'roll', rolling, {
    ...strip,
    tireWidth: truck('tire-width'),
    tiresPerSide: truck('tires-per-side'),
    speed: truck('speed'),
    efficiency: truck('efficiency'),
    machines: truck('count'),
    passes: truck('passes'),
  })
  return [...uses, roll]
}
