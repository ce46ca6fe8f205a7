import * as z from 'zod'
import { inks } from '../../../model/ink.ts'
import { entries, group, holding } from './group.ts'

/** What is printed by the reader's own browser, without the program. */
export const printing = z.strictObject({
  ...entries(
    'title',
    'about',
    'binder',
    'binderAbout',
    'sheets',
    'sheetsAbout',
    'all',
    'handout',
    'cards',
    'which',
    'paper',
    'ink',
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
  /** How paper is called, and what is printed with. */
  inks: group(...inks),
  papers: group('letter', 'tabloid', 'a4', 'a3'),
  /** How many pages the browser is about to print. */
  done: holding('pages'),
  fault: holding('why'),
})
