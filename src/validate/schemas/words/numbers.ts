import { group } from './group.ts'

/** `notInFile` follows the label of a fact. */
export const figure = group(
  'estimate',
  'measure',
  'worksheet',
  'notKnown',
  'notInFile',
  'noMachine',
  'commonPractice',
  'because',
  'figures',
  'value',
  'what',
)

export const worksheet = group(
  'title',
  'about',
  'goesIn',
  'comesOut',
  'symbol',
  'value',
  'what',
  'from',
  'howTo',
  'formula',
  'numbers',
  'result',
  'rounded',
  'sources',
  'usedBy',
  'noNumber',
)

export const reckoner = group('worksheet', 'own', 'estimate')

export const months = group('title', 'about', 'month', 'air', 'water', 'loads', 'dry')

export const facility = group(
  'title',
  'about',
  'label',
  'value',
  'source',
  'machine',
  'can',
  'from',
  'role',
  'name',
  'phone',
  'date',
  'firstPost',
  'races',
  'interval',
  'plan',
)
