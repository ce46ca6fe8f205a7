import * as z from 'zod'
import { id, line } from '../text.ts'
import { group } from './group.ts'

export const site = group('skip', 'urgent', 'menu', 'others', 'made', 'sheets')

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
