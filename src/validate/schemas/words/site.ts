import * as z from 'zod'
import { id, line } from '../text.ts'
import { entries, holding } from './group.ts'

export const site = z.strictObject({
  ...entries(
    'skip',
    'bar',
    'menu',
    'menuName',
    'jump',
    'top',
    'others',
    'made',
    'sheets',
    'sheet',
    'papers',
    'binder',
    'binderAbout',
    'sheetsAbout',
    'cardsAbout',
    'due',
    'lastDays',
    'newer',
    'show',
    'keep',
    'kept',
    'failed',
  ),
  /** The first touch in an emergency: it dials. */
  dial: holding('number'),
  /** What is due, counted from the day of the manual where no script knows today. */
  dueFrom: holding('date'),
  dueRaces: holding('races', 'time'),
  /** Which revision a phone keeps. */
  saved: holding('revision', 'date'),
  /** How large a printed file is, in megabytes. */
  file: holding('size'),
  /** The same, where it was not made anew with the pages. */
  olderFile: holding('file', 'revision', 'date'),
})

/** The manual in one file, which is sent from hand to hand. */
export const oneFile = z.strictObject({
  ...entries('title', 'about', 'showAll'),
  /** How large it is, in megabytes. */
  file: holding('size'),
})

/** The search: what results are, and what is said of them. */
export const search = z.strictObject({
  ...entries(
    'label',
    'find',
    'hint',
    'none',
    'all',
    'procedure',
    'symptom',
    'plan',
    'worksheet',
    'reckoner',
    'form',
    'hazard',
    'finding',
    'term',
    'chapter',
    'page',
    'paper',
  ),
  found: holding('count'),
})

/**
 * What pages are called, by their ids. Which entries there are is said by each page; they are held
 * against it where pages are checked (`src/render/site/check-pages.ts`).
 */
export const pages = z.record(
  id,
  z.strictObject({
    title: line,
    menu: line.optional(),
    link: line.optional(),
    about: line.optional(),
  }),
)
