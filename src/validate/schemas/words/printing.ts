import * as z from 'zod'
import { entries, holding } from './group.ts'

/** What is printed by the reader's own browser, without the program. */
export const printing = z.strictObject({
  ...entries(
    'title',
    'about',
    'binder',
    'binderAbout',
    'sheets',
    'sheetsAbout',
    'sheet',
    'which',
    'paper',
    'ink',
    'color',
    'black',
    'booklet',
    'enlarged',
    'print',
    'laying',
    'noFeet',
    'noHeads',
    'asIs',
    'bothSides',
    'oneSide',
    'blocked',
  ),
  papers: z.strictObject(entries('letter', 'tabloid', 'a4', 'a3')),
  /** How many pages the browser is about to print. */
  done: holding('pages'),
  fault: holding('why'),
})
