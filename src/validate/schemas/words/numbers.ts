import * as z from 'zod'
import { spelledUnits } from '../../../model/quantity/format-quantity.ts'
import { entries, group, holding } from './group.ts'

export const figure = z.strictObject({
  ...entries('estimate', 'measure', 'notKnown', 'noMachine'),
  /** Why a fact is not known, by its label. */
  notInFile: holding('label'),
})

export const worksheet = z.strictObject({
  ...entries(
    'title',
    'symbol',
    'value',
    'what',
    'from',
    'formula',
    'numbers',
    'sources',
    'noNumber',
    'shared',
    'sharedAbout',
    'fromShared',
    'usual',
    'up',
    'down',
  ),
  usualAs: holding('note'),
  standsWith: holding('number'),
  roundedUp: holding('step'),
  roundedDown: holding('step'),
  roundedToNearest: holding('step'),
})

/** Units that are written out. */
export const units = group(...spelledUnits)

/** What is cited and no publication. */
export const sources = group('commonPractice', 'commonPracticeMark', 'geometry')

export const reckoner = group('worksheet', 'own', 'estimate')

export const months = group('title', 'about', 'month', 'air', 'water', 'loads', 'dry')

export const facility = z.strictObject({
  ...entries(
    'about',
    'label',
    'value',
    'machine',
    'can',
    'from',
    'date',
    'firstPost',
    'races',
    'interval',
  ),
  /** Where a value stands in a file. */
  line: holding('file', 'line'),
})
