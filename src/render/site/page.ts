import * as z from 'zod'
import type { Manual } from '../../model/manual.ts'
import { entries } from '../../validate/schemas/words/group.ts'
import type { Words } from '../../validate/schemas/words.ts'
import type { Drawings } from '../drawings/drawings.ts'
import type { Pen } from '../views/pen.ts'

/** What pages are made from. */
export type SiteContext = {
  readonly manual: Manual
  readonly words: Words
  readonly drawings: Drawings
  /** Writes with the links of the page at hand: those of pages in a folder lead up first. */
  readonly pen: Pen
  /** Whether the field book lies beside the pages: only where a browser could print. */
  readonly printed: boolean
  /** Pages that the first one offers below its doors, in their order. */
  readonly offered: readonly {
    readonly id: string
    readonly link: string
    readonly about: string
  }[]
}

/**
 * What the file of words says of a page beside its title: `menu` is its entry in the menu; `link`
 * and `about` stand on the first page, which offers every page that has both; `about` may stand
 * below its own title too.
 */
type PageWord = 'menu' | 'link' | 'about'

/**
 * A page: `symptoms.html`, made by `templates/site/symptoms.hbs` and called by `pages.symptoms` of
 * the file of words, which the template is given as `page`.
 */
export type SitePage = {
  readonly id: string
  readonly words: readonly PageWord[]
  /** The page of whose entry in the menu it is a part, where it has none of its own. */
  readonly under?: string
  /** Worked out only when the page is wanted. */
  readonly data: (site: SiteContext) => object
}

/** Pages in a folder of the site, one for each thing of a kind. */
export type PageFamily = {
  readonly folder: string
  readonly template: string
  readonly under: string
  readonly list: (site: SiteContext) => readonly {
    readonly id: string
    readonly title: string
    readonly data: () => object
  }[]
}

/** The template that makes each page of a family. */
export const familyTemplate = ({ template }: PageFamily): string => `site/${template}`

/** The words of a page: its title, and what it asks for beside it. */
export type PageTexts = { readonly title: string } & Readonly<Partial<Record<PageWord, string>>>

export const pageWords = ({ words }: SitePage): z.ZodType<PageTexts> =>
  z.strictObject(entries('title', ...words))
