import type { BrowserPage } from '../page/open-page.ts'

/** A place to write on a form as laid out, CSS pixels from its page's top left. */
export type PlaceToWrite = {
  readonly name: string
  readonly tip: string
  readonly kind: string
  readonly lines: number
  /** From 0. */
  readonly page: number
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

function placesInPage(): PlaceToWrite[] {
  return [...document.querySelectorAll('.form')].flatMap((form, page) => {
    const paper = form.getBoundingClientRect()
    const body = form.querySelector('.form-body')
    if (body && body.scrollHeight > body.clientHeight + 1)
      throw new Error(`${form.id} does not fit on its page`)
    return [...form.querySelectorAll('[data-field]')].map((e) => {
      const r = e.getBoundingClientRect()
      return {
        name: e.dataset['field'] ?? '',
        tip: e.dataset['tip'] ?? '',
        kind: e.dataset['kind'] ?? 'text',
        lines: Number(e.dataset['lines'] ?? 1),
        page,
        x: r.left - paper.left,
        y: r.top - paper.top,
        width: r.width,
        height: r.height,
      }
    })
  })
}

/**
 * All places to write on the forms that a page shows, each form on a sheet of its own.
 * @throws Error when a form runs off its sheet.
 */
export const placesToWrite = (page: BrowserPage): Promise<readonly PlaceToWrite[]> =>
  page.evaluate(placesInPage)

/** How many forms a page shows. */
export const formsIn = (page: BrowserPage): Promise<number> =>
  page.evaluate(() => document.querySelectorAll('.form').length)
