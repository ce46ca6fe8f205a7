import type { Engine } from '../../compute/engine/engine.ts'
import type { PassPattern } from '../../model/manual/charts.ts'
import type { ComposeContext } from '../context.ts'

/** Works that cover the whole width, with the width and overlap of the machine behind each. */
const covering = [
  { figure: 'grade', width: 'gear.grade.width', overlap: 'gear.grade.overlap', from: 'rail' },
  { figure: 'harrow', width: 'gear.harrow.width', overlap: 'gear.harrow.overlap', from: 'rail' },
  { figure: 'screen', width: 'gear.screen.width', overlap: 'gear.screen.overlap', from: 'rail' },
  {
    figure: 'drum',
    width: 'gear.roll-drum.width',
    overlap: 'gear.roll-drum.overlap',
    from: 'rail',
  },
  {
    figure: 'condition',
    width: 'gear.condition.width',
    overlap: 'gear.condition.overlap',
    from: 'rail',
  },
  // Water goes from the outside toward the rail; all else outward.
  {
    figure: 'spray',
    width: 'gear.spray.spray-width',
    overlap: 'gear.spray.overlap',
    from: 'outside',
  },
] as const

function patternOf(
  { figure, width, overlap, from }: (typeof covering)[number],
  engine: Engine,
): PassPattern | undefined {
  const worked = engine.siOfAll({
    strips: `${figure}.strips`,
    effective: `${figure}.effective`,
  })
  if (!worked) return undefined
  const kept = engine.si(overlap) ?? 0
  const covers = worked.effective + kept
  return {
    figure,
    strips: worked.strips,
    across: Math.max(engine.si('oval.width.straights') ?? 0, engine.si('oval.width.turns') ?? 0),
    covers,
    width,
    overlap: kept > 0 ? overlap : undefined,
    angled: (engine.si(width) ?? 0) > covers + 1e-6,
    from,
  }
}

/**
 * Pass patterns of the implements that the facility has, from the figures of covering the whole
 * width.
 */
export const composePasses = ({ engine }: ComposeContext): Readonly<Record<string, PassPattern>> =>
  Object.fromEntries(
    covering.flatMap((work): [string, PassPattern][] => {
      const pattern = patternOf(work, engine)
      return pattern ? [[work.figure, pattern]] : []
    }),
  )
