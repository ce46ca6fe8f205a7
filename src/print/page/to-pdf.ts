import type { BrowserPage } from './open-page.ts'

/** Lets go of what was held at a width while it was laid out. */
const release = (page: BrowserPage): Promise<void> =>
  page.evaluate(() => document.body.style.setProperty('width', ''))

/** Makes everything seen besides that was hidden, or empty, while it was laid out. */
const show = (page: BrowserPage): Promise<void> =>
  page.evaluate(() => {
    globalThis.drawings.putBack()
    document.body.style.setProperty('visibility', '')
    document.body.style.setProperty('width', '')
  })

/** The paper, its size and margins are those of the style. */
const asStyled = {
  preferCSSPageSize: true,
  // In where the style does not say them.
  ...{ marginTop: 0, marginBottom: 0, marginLeft: 0, marginRight: 0 },
}

/**
 * Prints where everything stands, without any of it, as long as it is hidden: for the places that
 * links lead to.
 */
export async function toDraft(page: BrowserPage): Promise<Uint8Array> {
  await release(page)
  return page.print({ ...asStyled, generateTaggedPDF: false, generateDocumentOutline: false })
}

/**
 * Prints what a page shows, at the size that its style asks for, with tags and bookmarks.
 * @param ranges Pages to print, such as `3-4,9`; all when it is left out.
 */
export async function toPdf(page: BrowserPage, ranges = ''): Promise<Uint8Array> {
  await show(page)
  return page.print({
    ...asStyled,
    printBackground: true,
    generateTaggedPDF: true,
    generateDocumentOutline: true,
    pageRanges: ranges,
  })
}
