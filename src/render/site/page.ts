import * as z from 'zod'
import type { Manual } from '../../model/manual.ts'
import { entries } from '../../validate/schemas/words/group.ts'
import type { Words } from '../../validate/schemas/words.ts'
import type { Drawings } from '../drawings/drawings.ts'
import type { Html } from '../text/html.ts'
import type { Pen } from '../views/pen.ts'
import type { FilesBeside } from './papers.ts'

/** A page that the first one leads to. */
type OfferedPage = { readonly id: string; readonly link: string; readonly about: string }

/** What pages are made from. */
export type SiteContext = {
  readonly manual: Manual
  readonly words: Words
  readonly drawings: Drawings
  /** Writes with the links of the page at hand: those of pages in a folder lead up first. */
  readonly pen: Pen
  readonly printed: FilesBeside
  /** Whether calendars and tables lie beside the pages: not where all is one file. */
  readonly beside: () => boolean
  /** Of which files beside the pages the page at hand has asked so far. */
  readonly asked: Set<string>
  /** Pages that people come for, in their order. */
  readonly doors: readonly OfferedPage[]
  /** Pages that the first one offers below these. */
  readonly offered: readonly OfferedPage[]
}

/**
 * What the file of words says of a page beside its title: `menu` is its entry in the menu; `link`
 * and `about` stand on the first page, which offers every page that has both; `about` may stand
 * below its own title too.
 */
type PageWord = 'menu' | 'link' | 'about'

/** Whether a page offers to put in numbers of the day where it shows what follows them. */
type Offers = { readonly offersDay?: true }

/** A place on the page at hand. */
export type Jump = { readonly id: string; readonly title: string | Html }

/** What the template of a page is given; a long page has a list of its places. */
type PageData = {
  readonly jumps?: readonly Jump[]
  readonly [name: string]: unknown
}

/**
 * A page: `symptoms.html`, made by `templates/site/symptoms.hbs` and called by `pages.symptoms` of
 * the file of words, which the template is given as `page`.
 */
export type SitePage = Offers & {
  readonly id: string
  readonly words: readonly PageWord[]
  /** One of the doors of the first page: what people come for. */
  readonly door?: true
  /** The page of whose entry in the menu it is a part, where it has none of its own. */
  readonly under?: string
  /** Worked out only when the page is wanted. */
  readonly data: (site: SiteContext) => PageData
}

/** Pages in a folder of the site, one for each thing of a kind. */
export type PageFamily = Offers & {
  readonly folder: string
  readonly template: string
  readonly under: string
  readonly list: (site: SiteContext) => readonly {
    readonly id: string
    readonly title: string
    /** In the window's title, where the page's own would not tell it from another. */
    readonly called?: string
    readonly data: () => PageData
  }[]
}

/** The template that makes each page of a family. */
export const familyTemplate = ({ template }: PageFamily): string => `site/${template}`

/** The words of a page: its title, and what it asks for beside it. */
export type PageTexts = { readonly title: string } & Readonly<Partial<Record<PageWord, string>>>

export const pageWords = ({ words }: SitePage): z.ZodType<PageTexts> =>
  z.strictObject(entries('title', ...words))
