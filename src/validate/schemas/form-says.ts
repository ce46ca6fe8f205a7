import * as z from 'zod'
import { group, holding, plain } from './words/group.ts'

/** The frame of every screen. */
const frame = z.strictObject({
  title: plain,
  skip: plain,
  subjects: plain,
  result: plain,
  back: plain,
  save: plain,
  saved: plain,
  noFile: plain,
  undone: holding('what', 'subject'),
  unsaved: holding('count'),
  kept: plain,
  answered: holding('done', 'all'),
  of: holding('done', 'all'),
  done: plain,
  later: plain,
  next: holding('subject'),
  working: plain,
  unreadable: plain,
  refused: plain,
})

/** The first screen. */
const start = group(
  'title',
  'lead',
  'begin',
  'beginAbout',
  'goOn',
  'goOnAbout',
  'questions',
  'where',
  'whereText',
  'who',
  'whoSubjects',
  'whoDispatch',
  'whoSurvey',
  'whoSuperintendent',
)

/** One question with its field. */
const field = z.strictObject({
  such: holding('example'),
  between: holding('low', 'high'),
  why: holding('why'),
  lookAgain: holding('fault'),
  notMeasured: plain,
  notKnown: plain,
  estimate: holding('value'),
  untilRule: holding('value'),
  measured: holding('date', 'name'),
  measuredAbout: plain,
  measure: plain,
  measureDay: plain,
  measureWho: plain,
  measureKeep: plain,
  lines: plain,
  choose: plain,
  yes: plain,
  no: plain,
  name: plain,
  phone: plain,
  zone: holding('zone'),
  noPhone: plain,
  noName: plain,
  isMissing: holding('what'),
  misfit: holding('what'),
  leftOut: plain,
  keptOut: holding('what'),
  takenOut: plain,
  twice: plain,
  copied: plain,
  more: plain,
  moreHint: plain,
})

/** Lists: people, days, machines, measurements. */
const list = z.strictObject({
  none: plain,
  add: holding('what'),
  close: plain,
  up: holding('what'),
  down: holding('what'),
  remove: holding('what'),
  fresh: plain,
  likeLast: plain,
  lacking: holding('what'),
  machine: plain,
  machineWhat: plain,
  machineAdd: plain,
  machineNoName: plain,
  machineNoWork: plain,
  machineMore: plain,
  sieve: plain,
  share: plain,
  sieveAdd: plain,
  sieveRemove: holding('sieve'),
})

/** What one entry of a list is called, by the list. */
const entries = z.record(z.string(), plain)

/** Before the file is written. */
const saving = z.strictObject({
  title: plain,
  lead: plain,
  line: holding('number'),
  gone: plain,
  now: plain,
  write: plain,
  not: plain,
  same: plain,
  newFile: plain,
  one: plain,
  several: holding('count'),
  misfit: plain,
  misfits: holding('count'),
  showLines: plain,
  failed: holding('why'),
  changed: plain,
  changedLead: plain,
  clash: holding('what'),
  mine: holding('value'),
  theirs: holding('value'),
  takeMine: plain,
  takeTheirs: plain,
  nothing: plain,
  remarks: plain,
})

/** The last screen. */
const result = z.strictObject({
  title: plain,
  ready: plain,
  missing: plain,
  faults: plain,
  leftOut: plain,
  make: plain,
  making: plain,
  made: plain,
  open: plain,
  failed: holding('why'),
  file: plain,
  fileAbout: plain,
})

/** All that the screens of the form say beside the questions themselves. */
export const says = z.strictObject({ frame, start, field, list, entries, saving, result })
