import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type ContextFor, labels } from '../drawing.ts'

export const wording = labels('rolling', {
  ...entries('pylons', 'hubRail', 'outside', 'above', 'last', 'starts', 'near'),
  places: holding('trucks'),
  lap: holding('number'),
  behind: holding('number'),
  tires: holding('tread', 'gap'),
  tire: holding('tread'),
  between: holding('width'),
  farther: holding('move'),
  shut: holding('width', 'laps'),
  then: holding('jump'),
  thenAt: holding('trucks'),
  strips: holding('strips', 'laps'),
  total: holding('each'),
  all: holding('laps'),
  key: holding('trucks'),
  drives: holding('truck', 'at'),
  row: holding('number', 'trucks'),
})
export type RollingContext = ContextFor<typeof wording>
