import type { Page } from 'puppeteer'

export type PdfOptions = {
  readonly tagged: boolean /** Pages to print, such as `3-4,9`; all when it is left out. */
  readonly ranges?: string
}

/** Prints what a page shows, at the size that its style asks for. */
export async function toPdf(page: Page, { tagged, ranges }: PdfOptions): Promise<Uint8Array> {
  // Waiting for fonts lays everything out for a screen first; those of the press are there already.
  return page.pdf({
    preferCSSPageSize: true,
    printBackground: true,
    tagged,
    outline: tagged,
    waitForFonts: false,
    timeout: 300_000,
    ...(ranges === undefined ? {} : { pageRanges: ranges }),
  })
}
