import * as z from 'zod'
import { figureName } from '../text.ts'
import { entries, holding, plain } from './group.ts'

/** What the answers of a form make, beside its questions. */
export const live = z.strictObject({
  ...entries(
    'title',
    'close',
    'fits',
    'plan',
    'figures',
    'emergency',
    'findings',
    'noFindings',
    'machines',
    'missing',
    'missingAbout',
    'noMissing',
    'counting',
  ),
  open: holding('findings'),
  drawn: holding('lengths'),
  leftOut: holding('what'),
  nth: holding('what', 'number'),
  /** Why work begins before daylight. */
  early: z.strictObject({ water: holding('time', 'what'), harrow: holding('time', 'what') }),
  standIns: holding('what'),
  blanks: holding('count'),
  goTo: holding('what'),
  can: holding('machines', 'does'),
  opens: holding('procedures'),
  cannot: holding('does'),
  without: holding('procedures'),
  now: holding('value'),
  moves: holding('count'),
  most: holding('what'),
  summary: holding('serious', 'findings'),
  /** The numbers that tell most, the first ten that there are; with a name of their own, or that of their worksheet. */
  telling: z.array(z.strictObject({ figure: figureName, label: plain.optional() })).min(1),
})
