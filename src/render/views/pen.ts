import type { Manual } from '../../model/manual.ts'
import type { Words } from '../../validate/schemas/words.ts'
import type { Html } from '../text/html.ts'
import { blockHtml, lineHtml, plainWords, type TextContext } from '../text/render-text.ts'

/** What every view is written with: the manual, the fixed words, and the rules of the medium. */
export type Pen = {
  readonly manual: Manual
  readonly words: Words
  readonly medium: 'paper' | 'screen'
  readonly context: TextContext
  readonly line: (text: string) => Html
  readonly block: (text: string) => Html
  readonly plain: (text: string) => string
}

/** One pen for each medium: the links differ, the words are the same. */
export function createPen(
  manual: Manual,
  words: Words,
  medium: Pen['medium'],
  links: Omit<TextContext, 'quantities' | 'cache'>,
): Pen {
  const context: TextContext = { quantities: manual.quantities, ...links, cache: new Map() }
  return {
    manual,
    words,
    medium,
    context,
    line: (text) => lineHtml(text, context),
    block: (text) => blockHtml(text, context),
    plain: (text) => plainWords(text, manual.quantities),
  }
}
