import { group } from './group.ts'

export const procedure = group(
  'when',
  'who',
  'authority',
  'gear',
  'tools',
  'material',
  'time',
  'person',
  'people',
  'measureFirst',
  'found',
  'whatToDo',
  'choose',
  'see',
  'rightWhen',
  'ifNot',
  'ifNotSee',
  'ifNotDo',
  'stop',
  'records',
  'why',
  'otherSizes',
  'next',
  'notes',
  'instead',
  'steps',
  'sources',
  'numbersHere',
  'readMore',
)

export const sheet = group(
  'when',
  'doneRight',
  'stopAndCall',
  'worksheets',
  'readsTo',
  'revision',
  'next',
  'scan',
)

export const cards = group('title')

export const training = group(
  'title',
  'about',
  'aims',
  'show',
  'practice',
  'questions',
  'answer',
  'because',
  'signOff',
  'name',
  'date',
  'trainer',
)
