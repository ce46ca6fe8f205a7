import * as z from 'zod'
import { entries, group, holding } from './group.ts'

export const binder = z.strictObject({
  ...entries(
    'subject',
    'revision',
    'date',
    'contents',
    'glance',
    'findings',
    'sources',
    'machines',
    'raceDays',
    'lists',
    'sheetsAbout',
    'formsAbout',
    'record',
    'recordAbout',
    'changed',
    'by',
    'copies',
    'copiesAbout',
    'copy',
    'holder',
    'place',
    'index',
    'indexAbout',
    'blank',
    'day',
    'procedure',
    'seen',
    'toChange',
    'sectionLessons',
    'sectionNotes',
    'sectionNotesAbout',
    'sheetsHere',
    'drawings',
    'replacement',
    'dividers',
    'replacementAbout',
    'takeOut',
    'putIn',
    'done',
  ),
  /** Head of a page to write on, behind its procedure. */
  recordOf: holding('title'),
  /** A line of the contents that stands for some worksheets in a row. */
  fromTo: holding('first', 'last'),
  /** Head of a lesson, which may stand apart from its procedure. */
  lesson: holding('title'),
})

/** Titles of the parts behind the sections. */
export const parts = group('plans', 'symptoms', 'reckoners', 'safety', 'worksheets', 'glossary')
