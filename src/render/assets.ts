import type { Words } from '../validate/schemas/words.ts'
import type { TemplateTexts } from './text/templates.ts'

/** What rendering needs beside the manual; the files are read by the caller. */
export type RenderAssets = {
  readonly templates: TemplateTexts
  /** Style sheets by name. */
  readonly styles: Readonly<Record<string, string>>
  readonly words: Words
  /** `@font-face` rules: data URLs for print, files for the site. */
  readonly fontCss: string
}
