import type { Words } from '../validate/schemas/words.ts'
import type { TemplateSet } from './text/templates.ts'

/** What rendering needs beside the manual; the files are read by the caller. */
export type RenderAssets = {
  readonly templates: TemplateSet
  /** Style sheets by name. */
  readonly styles: Readonly<Record<string, string>>
  readonly words: Words
  /** `@font-face` rules: data URLs for print, files for the site. */
  readonly fontCss: string
}

/** What the pages of the site carry beside. */
export type SiteAssets = RenderAssets & {
  /** Scripts of the pages, each whole in one text. */
  readonly scripts: SiteScripts
  /** Whether a phone may keep the site: not what changes while it is written. */
  readonly keeps: boolean
}

/** Scripts of the site, each a file: `page` of every page, the others of one page each. */
export const siteScripts = ['page', 'search', 'choose', 'records', 'learn', 'today'] as const

/** The same as texts, with that of the manual in one file. */
export type SiteScripts = Readonly<Record<(typeof siteScripts)[number] | 'oneFile', string>>

/**
 * Style sheets, one behind the other.
 * @throws RangeError when there is none of a name.
 */
export const stylesOf = ({ styles }: RenderAssets, ...names: readonly string[]): string =>
  names
    .map((name) => {
      const style = styles[name]
      if (style === undefined) throw new RangeError(`there is no style sheet ${name}`)
      return style
    })
    .join('\n')
