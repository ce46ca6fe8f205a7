import * as z from 'zod'
import { line } from '../text.ts'
import { entries, group, holding } from './group.ts'

export const symptoms = group('about', 'check', 'cause', 'do', 'stop')

/** What leads from something seen to its cause. */
export const choose = z.strictObject({
  ...entries('all', 'apart', 'how', 'again'),
  left: holding('count', 'all'),
})

export const findings = z.strictObject({
  ...entries(
    'title',
    'found',
    'about',
    'do',
    'where',
    'none',
    'measure',
    'measureAbout',
    'hangs',
    'moved',
  ),
  guesses: holding('what'),
})

export const safety = group(
  'signals',
  'call',
  'limits',
  'hazards',
  'hazardsAbout',
  'belongs',
  'behind',
)

/** The emergency page; `then` is what dispatch is told after the place. */
export const emergency = z.strictObject({
  ...entries(
    'title',
    'about',
    'call',
    'standby',
    'say',
    'stop',
    'stopWords',
    'stopWho',
    'radio',
    'reopen',
    'meet',
    'meetWords',
    'who',
    'address',
    'gate',
    'way',
    'coordinates',
    'map',
    'mapApple',
    'meetingPoint',
    'hospital',
    'equineClinic',
    'firstAid',
    'defibrillator',
    'extinguishers',
    'blank',
  ),
  then: z.array(line).min(1),
})
