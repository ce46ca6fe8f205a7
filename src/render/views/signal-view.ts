import { type CautionView, cautionView } from './caution-view.ts'
import type { Pen } from './pen.ts'

/** The four signal words with what each means. */
export const signalView = (pen: Pen): readonly CautionView[] =>
  (['danger', 'warning', 'caution', 'notice'] as const).map((signal) =>
    cautionView(
      {
        signal,
        hazard: pen.words.signalMeanings[signal],
        avoid: '',
      },
      pen,
    ),
  )
