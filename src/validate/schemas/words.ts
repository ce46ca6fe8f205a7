import * as z from 'zod'
import { drawingNames } from '../../model/drawing-names.ts'
import { line } from './text.ts'

const list = (...keys: readonly string[]) => z.strictObject(Object.fromEntries(keys.map((k) => [k, line])) as Record<string, typeof line>)
/** The same, with names that the compiler knows. */
const known = <const K extends string>(...keys: readonly K[]) => Object.fromEntries(keys.map((k) => [k, line])) as Record<K, typeof line>
const named = z.record(z.string(), line)

/** All fixed words of the pages: what a reader would want to change stands in content, not in templates. */
export const words = z.strictObject({
  /** Titles of the groups of "facility at a glance", by the group's name in the facility file. */
  groups: named,
  /** Titles of contacts by role. */
  roles: named,
  /** What a capability is called. */
  capabilities: named,
  /** Shown for each provenance of a value. */
  provenance: list('measured', 'stated', 'typical', 'rule', 'derived'),
  signals: list('danger', 'warning', 'caution', 'notice'),
  signalMeanings: list('danger', 'warning', 'caution', 'notice'),
  severities: list('serious', 'plan', 'note'),
  materials: named,
  rails: named,
  procedure: list(
    'when', 'who', 'authority', 'gear', 'tools', 'material', 'time', 'person', 'people', 'measureFirst', 'found', 'whatToDo', 'choose', 'see', 'rightWhen', 'ifNot', 'ifNotSee', 'ifNotDo', 'stop', 'records',
    'why', 'otherSizes', 'next', 'notes', 'instead', 'steps', 'sources', 'numbersHere', 'readMore',
  ),
  sheet: list('when', 'doneRight', 'stopAndCall', 'worksheets', 'readsTo', 'revision', 'next', 'scan'),
  figure: list('estimate', 'measure', 'worksheet', 'notKnown', 'because', 'figures', 'value', 'what'),
  worksheet: list('title', 'about', 'goesIn', 'comesOut', 'symbol', 'value', 'what', 'from', 'howTo', 'formula', 'numbers', 'result', 'rounded', 'sources', 'usedBy', 'noNumber'),
  binder: list('subject', 'revision', 'date', 'contents', 'glance', 'findings', 'plans', 'symptoms', 'reckoners', 'safety', 'training', 'glossary', 'worksheets', 'sources', 'front', 'contacts', 'machines', 'raceDays', 'procedures', 'keep', 'lists', 'sheetsAbout', 'formsAbout', 'record', 'recordAbout', 'changed', 'by', 'copies', 'copiesAbout', 'copy', 'holder', 'place', 'index', 'indexAbout', 'throughout', 'blank', 'drawings', 'replacement', 'dividers', 'replacementAbout', 'takeOut', 'putIn', 'done'),
  site: list(
    'skip', 'home', 'urgent', 'menu', 'see', 'seeAbout', 'do', 'doAbout', 'plan', 'planAbout', 'numbers', 'numbersAbout', 'safety', 'safetyAbout', 'learn', 'learnAbout', 'board', 'boardAbout', 'facility', 'facilityAbout', 'reckoners',
    'reckonersAbout', 'more', 'moreAbout', 'terms', 'made', 'binder', 'sheets', 'sheet', 'print',
  ),
  symptoms: list('title', 'about', 'says', 'looks', 'check', 'cause', 'do', 'stop'),
  findings: list('title', 'about', 'do', 'where', 'none', 'measure', 'measureAbout', 'hangs', 'moved'),
  safety: list('title', 'about', 'signals', 'call', 'limits', 'hazards', 'hazardsAbout', 'whole', 'signal', 'hazard', 'avoid', 'step', 'behind'),
  /** The emergency page; `then` is what dispatch is told after the place. */
  emergency: z.strictObject({
    ...known(
      'title', 'about', 'call', 'say', 'stop', 'stopWords', 'stopWho', 'radio', 'reopen', 'meet', 'meetWords', 'who', 'address', 'gate', 'way', 'coordinates', 'meetingPoint', 'hospital', 'equineClinic', 'firstAid', 'defibrillator', 'extinguishers', 'blank',
    ),
    then: z.array(line).min(1),
  }),
  training: list('title', 'about', 'aims', 'show', 'practice', 'questions', 'answer', 'because', 'signOff', 'name', 'date', 'trainer'),
  reckoner: list('worksheet', 'own', 'estimate'),
  cards: list('title'),
  forms: list('title', 'row', 'who', 'moment', 'kept', 'page', 'of', 'rail', 'middle', 'outside', 'line'),
  plans: list('title', 'about', 'stockpile', 'across', 'sample', 'group', 'texture', 'feel', 'notTold', 'noClay'),
  /** Plain meanings of the symbols of soil groups, and how each kind of texture feels when it is squeezed. */
  soils: z.strictObject({ groups: named, feel: named }),
  months: list('title', 'about', 'month', 'air', 'water', 'loads', 'dry'),
  facility: list('title', 'about', 'label', 'value', 'source', 'machine', 'can', 'from', 'role', 'name', 'phone', 'date', 'firstPost', 'races', 'interval', 'plan'),
  drawings: list(
    'lap', 'straight', 'radius', 'width', 'travel', 'raceDay', 'beforeThat', 'afterFair', 'foundSlope', 'wantedSlope', 'tooHigh', 'tooLow', 'homeStraight', 'firstTurn', 'backStraight', 'lastTurn', 'haul', 'rail', 'outside', 'base', 'cushion', 'level', 'crossFall', 'raised', 'heights', 'start', 'move', 'ridge', 'water', 'groove', 'cut', 'lifts', 'long', 'lump', 'up', 'thin', 'bar', 'overlap',
    'lapNumber', 'pile', 'wider', 'tooShallow', 'asWanted', 'tooDeep', 'passes', 'grainSize', 'grit',
    'fairMonth', 'waterDay', 'loads', 'humidity', 'airTemperature', 'heat1', 'heat2', 'heat3', 'heat4', 'horses', 'noHorse', 'harrow', 'water1', 'waterInstead', 'lapsOf', 'trackClear', 'trackOpen', 'afterFinish', 'nextRace', 'full', 'wanted', 'dusts', 'later', 'moisture', 'dryDays', 'strips', 'workingWidth', 'eachAdds', 'twice', 'outward', 'inward', 'startOutside', 'overlapLeast', 'angled',
  ),
  /** Titles of drawings, for lists. */
  drawingTitles: list(...drawingNames),
  /** What to see in each drawing; also its text alternative. */
  captions: list(...drawingNames),
})

export type Words = z.infer<typeof words>
