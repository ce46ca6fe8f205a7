import type { LayingPage } from '../page/open-page.ts'
import type { TextArea } from './openings/lay-openings.ts'

/** Marks what does not fit into its column, so that its style lets it span the columns. */
function spanInPage(width: number): void {
  const { body } = document
  const before = body.style.getPropertyValue('width')
  body.style.setProperty('width', `${width}px`)
  const over = [...document.querySelectorAll('.may-span')].filter(
    (part) => part.scrollWidth > part.clientWidth,
  )
  for (const part of over) part.classList.add('spans')
  body.style.setProperty('width', before)
}

/** Lets the parts `may-span` that are wider than their column span all columns. */
export const spanWide = (page: LayingPage, { width }: TextArea): Promise<void> =>
  page.evaluate(spanInPage, width)
