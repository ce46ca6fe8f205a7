import type { BrowserPage } from '../page/open-page.ts'

/** Room for text on a page, CSS pixels (1/96 in). */
export type TextArea = { readonly width: number; readonly height: number }

/** A last page that is filled less than this is worth setting the procedure a little closer. */
const shortTail = 0.25

/**
 * Lays every procedure out in columns as large as a page, which break as pages do, and sets closer
 * the ones that end with a few lines on a page of their own, where that spares the page.
 */
function tightenInPage({ width, height }: TextArea, tail: number): void {
  const gap = 16
  const { body } = document
  const ends = (article: PageElement): { page: number; filled: number } => {
    const [frame, last] = [
      article.getBoundingClientRect(),
      article.lastElementChild?.getBoundingClientRect(),
    ]
    return last
      ? {
          page: Math.round((last.left - frame.left) / (width + gap)),
          filled: (last.bottom - frame.top) / height,
        }
      : { page: 0, filled: 0 }
  }
  body.style.setProperty('--area-width', `${width}px`)
  body.style.setProperty('--area-height', `${height}px`)
  body.style.setProperty('--area-gap', `${gap}px`)
  body.classList.add('in-columns')
  const loose = [...document.querySelectorAll('.procedure')]
    .map((article) => ({ article, ...ends(article) }))
    .filter(({ page, filled }) => page > 0 && filled < tail)
  for (const { article } of loose) article.classList.add('close')
  const closer = loose.map(({ article }) => ends(article).page)
  loose.forEach(({ article, page }, i) => {
    if ((closer[i] ?? page) >= page) article.classList.remove('close')
  })
  body.classList.remove('in-columns')
}

/** Spares pages that would hold only a procedure's last few lines. */
export const tightenTails = (page: BrowserPage, area: TextArea): Promise<void> =>
  page.evaluate(tightenInPage, area, shortTail)
