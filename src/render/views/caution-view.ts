import type { ManualCaution } from '../../model/manual/caution.ts'
import type { Html } from '../text/html.ts'
import { html } from '../text/html.ts'
import type { Pen } from './pen.ts'

export type CautionView = {
  readonly signal: string
  readonly word: string
  readonly alert: Html
  readonly hazard: Html
  readonly avoid: Html
}

/**
 * Safety alert symbol: triangle with exclamation mark, as ANSI Z535.4 puts it before the signal
 * word, except for NOTICE.
 */
const triangle = html(
  '<svg class="alert" viewBox="0 0 24 22" aria-hidden="true"><path d="M12 1 23 21H1Z" fill="currentColor"/><path d="M12 8v6.5" stroke="var(--signal)" stroke-width="2.6" stroke-linecap="round"/><circle cx="12" cy="17.9" r="1.5" fill="var(--signal)"/></svg>',
)
const nothing = html('')

export const cautionView = (
  c: Pick<ManualCaution, 'signal' | 'hazard' | 'avoid'>,
  pen: Pen,
): CautionView => ({
  signal: c.signal,
  word: pen.words.signals[c.signal],
  alert: c.signal === 'notice' ? nothing : triangle,
  hazard: pen.line(c.hazard),
  avoid: pen.line(c.avoid),
})
