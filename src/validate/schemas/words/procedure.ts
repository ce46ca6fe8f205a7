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
  'rightWhen',
  'ifNot',
  'ifNotSee',
  'ifNotDo',
  'stop',
  'records',
  'why',
  'next',
  'notes',
  'instead',
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
  'about',
  'aims',
  'show',
  'practice',
  'questions',
  'answer',
  'name',
  'date',
  'trainer',
)
