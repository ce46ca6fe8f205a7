import type { Engine } from '../../compute/engine/engine.ts'
import { rankUnmeasured, type Sensitivity } from '../../compute/sensitivity.ts'
import { useIdOf } from '../../compute/uses/use.ts'
import type { ToMeasure } from '../../model/manual/finding.ts'
import type { ComposeContext } from '../context.ts'
import { measureLabel } from './quantities.ts'

/** What only a laboratory, or a season of weather, can tell: a tape, a watch and a bucket come first. */
const needsLab =
  /^(?:cushion\.unit-weight\.(?:solids|compacted)|cushion\.moisture\.held|practice\.(?:wetting\.|readily))/

const cheapFirst = (engine: Engine): readonly Sensitivity[] =>
  rankUnmeasured(engine).toSorted(
    (a, b) => Number(needsLab.test(a.fact.path)) - Number(needsLab.test(b.fact.path)),
  )

/**
 * The unmeasured values that some figure hangs on, the most telling first; those that take a
 * laboratory stand behind those that do not.
 */
export const composeToMeasure = ({ engine, library }: ComposeContext): readonly ToMeasure[] =>
  cheapFirst(engine).flatMap(({ fact, figures, most }) =>
    most
      ? [
          {
            of: fact.path,
            label: measureLabel(fact.path, library),
            text: fact.text,
            howTo: fact.howTo,
            figures,
            most: `${engine.worksheet(useIdOf(most.figure))?.title ?? ''}: ${engine.figure(most.figure)?.label ?? ''}`,
            percent: Math.round(most.share * 100),
          },
        ]
      : [],
  )
