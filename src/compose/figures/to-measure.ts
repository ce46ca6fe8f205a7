import { rankUnmeasured } from '../../compute/sensitivity.ts'
import { useIdOf } from '../../compute/uses/use.ts'
import type { ToMeasure } from '../../model/manual/finding.ts'
import type { ComposeContext } from '../context.ts'
import { measureLabel } from './quantities.ts'

/** The unmeasured values that some figure hangs on, the most telling first. */
export const composeToMeasure = ({ engine, library }: ComposeContext): readonly ToMeasure[] =>
  rankUnmeasured(engine).flatMap(({ fact, figures, most }) =>
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
