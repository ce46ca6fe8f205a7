import * as z from 'zod'
import { entries, group, holding, plain } from './group.ts'

/** What the box of hazards at the head of a procedure is read before. */
export const before = group('machine', 'start', 'self')

export const procedure = z.strictObject({
  ...entries(
    'when',
    'who',
    'authority',
    'gear',
    'tools',
    'material',
    'time',
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
  ),
  person: holding('count'),
  people: holding('count'),
  /** What is said of a machine that is here on certain days only. */
  booked: holding('days'),
})

export const sheet = z.strictObject({
  ...entries(
    'when',
    'bring',
    'found',
    'doneRight',
    'stopAndCall',
    'worksheets',
    'readsTo',
    'revision',
    'next',
    'scan',
  ),
  /** Which page of how many. */
  part: holding('number', 'of'),
})

export const cards = group('title')

export const fieldBook = z.strictObject({
  ...entries(
    'title',
    'about',
    'front',
    'notes',
    'carry',
    'booklet',
    'fold',
    'handout',
    'handoutAbout',
    'readFirst',
    'readFirstAbout',
  ),
  page: holding('page'),
  rest: holding('places'),
  before: holding('page'),
})

export const training = z.strictObject({
  ...entries('about', 'aims', 'show', 'practice', 'questions', 'answer', 'name', 'date', 'trainer'),
  ...entries(
    'courses',
    'coursesAbout',
    'all',
    'begin',
    'goOn',
    'again',
    'toQuestions',
    'check',
    'yours',
    'isRight',
    'right',
    'comesBack',
    'next',
    'result',
    'leave',
    'back',
    'shown',
    'look',
    'done',
    'showIt',
    'print',
  ),
  minutes: holding('minutes'),
  lessons: holding('count'),
  lessonOf: holding('lesson', 'lessons'),
  questionOf: holding('question', 'questions'),
  wrong: holding('answer'),
  first: holding('right', 'questions'),
  /** What answers to choose from are called, between spaces. */
  letters: plain,
})
