import type { Engine } from '../../compute/engine/engine.ts'
import type { PassPattern } from '../../model/manual/charts.ts'
import type { ComposeContext } from '../context.ts'

/** Works that are driven strip by strip, with the machine behind each. */
const covering = [
  { figure: 'grade', gear: 'gear.grade', from: 'rail' },
  { figure: 'grade-band', gear: 'gear.draw', from: 'rail', band: 'practice.grade.band' },
  { figure: 'harrow', gear: 'gear.harrow', from: 'rail' },
  { figure: 'screen', gear: 'gear.screen', from: 'rail' },
  { figure: 'drum', gear: 'gear.roll-drum', from: 'rail' },
  { figure: 'condition', gear: 'gear.condition', from: 'rail' },
  // Water goes from the outside toward the rail; all else outward.
  { figure: 'spray', gear: 'gear.spray', from: 'outside' },
] as const

type Work = (typeof covering)[number]

function patternOf(work: Work, engine: Engine): PassPattern | undefined {
  const { figure, gear, from } = work
  const worked = engine.siOfAll({
    strips: `${figure}.strips`,
    laps: `${figure}.laps`,
    effective: `${figure}.effective`,
  })
  if (!worked) return undefined
  const width =
    gear === 'gear.spray' ? (`${gear}.spray-width` as const) : (`${gear}.width` as const)
  const over = engine.si(`${gear}.overlap`) ?? 0
  const covers = worked.effective + over
  const tool = engine.si(width) ?? covers
  return {
    figure,
    strips: worked.strips,
    laps: worked.laps,
    perStrip: 1,
    band: 'band' in work ? engine.si(work.band) : undefined,
    covers,
    over,
    angle: Math.acos(Math.min(1, covers / tool)),
    tool,
    width,
    overlap: over > 0 ? `${gear}.overlap` : undefined,
    from,
    half: false,
  }
}

/** How a harrow is hitched to draw material outward: one end ahead, from memory. */
const drawAngle = Math.PI / 10

/**
 * Where no blade does it, a harrow draws material away from the rail: it moves out by half of its
 * width each lap, until it has made its laps.
 */
function drawInOf({ engine }: ComposeContext): [string, PassPattern][] {
  const x = engine.siOfAll({ laps: 'draw-in.laps', tool: 'gear.harrow.width' })
  if (!x || engine.si('grade-band.laps') !== undefined) return []
  const pattern: PassPattern = {
    figure: 'draw-in',
    strips: x.laps,
    laps: x.laps,
    perStrip: 1,
    band: (x.tool * (x.laps + 1)) / 2,
    covers: x.tool,
    over: x.tool / 2,
    angle: drawAngle,
    tool: x.tool,
    width: 'gear.harrow.width',
    overlap: undefined,
    from: 'rail',
    half: true,
  }
  return [['draw-in', pattern]]
}

/** Trucks on their tires: a strip is a block of laps, of which only the last leaves nothing loose. */
function rollingOf({ engine }: ComposeContext): [string, PassPattern][] {
  const x = engine.siOfAll({
    laps: 'roll.laps',
    perStrip: 'roll.block',
    covers: 'roll.width',
    over: 'gear.roll-tires.tire-overlap',
    passes: 'gear.roll-tires.passes',
  })
  if (!x) return []
  const strips = Math.round(x.laps / (x.passes * x.perStrip))
  const pattern: PassPattern = {
    figure: 'roll',
    strips,
    laps: x.laps,
    perStrip: x.perStrip,
    band: undefined,
    covers: x.covers,
    over: x.over,
    angle: 0,
    tool: x.covers,
    width: 'roll.width',
    overlap: undefined,
    from: 'rail',
    half: false,
  }
  return [['roll', pattern]]
}

/** Pass patterns of the implements that the facility has, from the figures of their work. */
export const composePasses = (context: ComposeContext): Readonly<Record<string, PassPattern>> =>
  Object.fromEntries([
    ...covering.flatMap((work): [string, PassPattern][] => {
      const pattern = patternOf(work, context.engine)
      return pattern ? [[work.figure, pattern]] : []
    }),
    ...drawInOf(context),
    ...rollingOf(context),
  ])
