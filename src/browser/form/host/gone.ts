import type { Words } from '../../../validate/schemas/words.ts'
import { button, classed, element } from '../../element.ts'
import type { FacilityFiles } from '../contract.ts'
import { handOver } from './hand-over.ts'

/** A word of warning that the program behind the page has ended. */
export type Gone = {
  /** Shows it, and what would be lost with the page. */
  readonly warn: (files: FacilityFiles) => void
  /** Takes it away, since the program answers again. */
  readonly back: () => void
}

/**
 * Whoever types into a page whose program has ended is told at once, not when she saves. The next
 * program has another address, to which this browser gives nothing of this page, so a copy of the
 * file is handed over.
 */
export function goneBar(words: Pick<Words, 'maker'>): Gone {
  let last: FacilityFiles = new Map()
  const bar = classed(
    'div',
    'gone',
    element('p', words.maker.programGone),
    element('p', words.maker.copyAbout),
    button(words.maker.saveCopy, () => {
      for (const [name, text] of last) handOver(name, text, 'text/plain')
    }),
  )
  bar.setAttribute('role', 'alert')
  return {
    warn: (files) => {
      last = files
      if (!bar.isConnected) document.body.prepend(bar)
    },
    back: () => bar.remove(),
  }
}
