import { noRoom } from '../../page/no-room.ts'
import type { LayingPage } from '../../page/open-page.ts'
import { endSection } from './end-section.ts'
import { type Pages, type Piece, placePieces } from './place-pieces.ts'

/** Room for text on a page, CSS pixels (1/96 in). */
export type TextArea = { readonly width: number; readonly height: number }

/** A procedure with its pieces as they measure in each setting. */
type Measured = { readonly id: string; readonly settings: readonly (readonly Piece[])[] }

/** How pieces are set: classes of their procedure, and which elements are its pieces. */
type Setting = { readonly classes: readonly string[]; readonly pieces: string }

/**
 * The widest first. In the last, two ways of working without figures stand side by side, as one
 * piece.
 */
const settings: readonly Setting[] = [
  { classes: [], pieces: '.piece' },
  { classes: ['close'], pieces: '.piece' },
  { classes: ['close', 'abreast'], pieces: ':scope > .piece, :scope > .pair' },
]

/** What is left free, so that rounding never pushes a line to a page of its own, CSS pixels. */
const slack = 4

/** Measures all pieces in all settings. Self-contained, since it is sent to the browser. */
function measureInPage({ width }: TextArea, settings: readonly Setting[]): Measured[] {
  const { body } = document
  const before = body.style.getPropertyValue('width')
  body.style.setProperty('width', `${width}px`)
  const articles = [...document.querySelectorAll('.procedure')]
  const piecesOf = (article: PageElement, selector: string): Piece[] =>
    [...article.querySelectorAll(selector)].map((piece) => ({
      part: (piece.dataset['part'] ?? '') as Piece['part'],
      height: piece.getBoundingClientRect().height,
      steps: [...piece.querySelectorAll(':scope > .steps > .step')].map(
        (s) => s.getBoundingClientRect().height,
      ),
    }))
  // All procedures in one setting before the next, so that all of them are laid out at once.
  const bySetting = settings.map(({ classes, pieces }) => {
    for (const { classList } of articles) for (const name of classes) classList.add(name)
    const measured = articles.map((article) => piecesOf(article, pieces))
    for (const { classList } of articles) for (const name of classes) classList.remove(name)
    return measured
  })
  body.style.setProperty('width', before)
  return articles.map(({ id }, i) => ({ id, settings: bySetting.map((all) => all[i] ?? []) }))
}

type Laid = { readonly id: string; readonly setting: Setting; readonly pages: Pages }

/**
 * Puts the pieces on their pages; an empty last page is a record to fill in, where pages are printed
 * on both sides, and so is what a last page has left. Self-contained, since it is sent to the browser.
 * @returns ids of procedures with a page that holds more than it has room for.
 */
function arrangeInPage(laid: readonly Laid[], { width, height }: TextArea): string[] {
  /** Lines to write on where a last page is half empty. */
  const fillUp = (side: PageElement, record: PageElement): void => {
    const used = [...side.children].map((piece) => piece.getBoundingClientRect().height)
    const room = side.getBoundingClientRect().height
    if (used.reduce((sum, h) => sum + h, 0) > room * 0.55) return
    side.querySelector('.ends')?.before(record)
    if (!record.parentElement) side.append(record)
    const rows = [...record.querySelectorAll('tbody tr')]
    while (side.scrollHeight > side.clientHeight && rows.length > 0) rows.pop()?.remove()
  }
  const { body } = document
  const before = body.style.getPropertyValue('width')
  body.style.setProperty('width', `${width}px`)
  body.style.setProperty('--area-height', `${height}px`)
  for (const { id, setting, pages } of laid) {
    const article = document.getElementById(id)
    if (!article) continue
    const pieces = [...article.querySelectorAll(setting.pieces)]
    const record = article.querySelector('.record')
    record?.remove()
    for (const name of setting.classes) article.classList.add(name)
    const sides = pages.map((placed) => {
      const side = document.createElement('div')
      side.className = 'side'
      for (const { piece, steps } of placed) {
        const whole = pieces[piece]
        if (!whole) continue
        if (!steps || steps.from > 0) {
          side.append(whole)
          continue
        }
        // The first steps are a copy, that the last ones keep what follows them.
        const begun = whole.cloneNode(true)
        for (const [i, step] of [...begun.querySelectorAll('.step')].entries())
          if (i >= steps.until) step.remove()
        for (const said of [...whole.children]) if (!said.querySelector('.step')) said.remove()
        for (const [i, step] of [...whole.querySelectorAll('.step')].entries())
          if (i < steps.until) step.remove()
        whole.classList.add('goes-on')
        side.append(begun)
      }
      return side
    })
    const last = sides.at(-1)
    article.append(...sides)
    if (!record || !last) continue
    if (sides.length % 2 === 1) {
      const side = document.createElement('div')
      side.className = 'side'
      side.append(record)
      article.append(side)
    } else if (sides.length > 2) fillUp(last, record)
  }
  const over = laid.filter(({ id }) =>
    [...document.querySelectorAll(`#${id} > .side`)].some(
      (side) => side.scrollHeight > side.clientHeight + 1,
    ),
  )
  body.style.setProperty('width', before)
  return over.map(({ id }) => id)
}

/** Heights of all pieces in all settings. */
const measureOpenings = (page: LayingPage, area: TextArea): Promise<readonly Measured[]> =>
  page.evaluate(measureInPage, area, settings)

/**
 * Lays every procedure out in openings.
 * @param scale What the page measures of a CSS pixel: 1 but where its style enlarges it.
 * @throws Error naming procedures of which a piece, or a page as it has come out, is higher than a
 * page.
 */
export async function layOpenings(page: LayingPage, area: TextArea, scale = 1): Promise<void> {
  const measured = await measureOpenings(page, area)
  const laid = measured.map(({ id, settings: pieces }) => {
    const placed = placePieces(pieces, (area.height - slack) * scale)
    const setting = settings[placed?.setting ?? 0]
    if (!placed || !setting) throw noRoom(`a part of ${id} is higher than a page`)
    return { id, setting, pages: placed.pages }
  })
  const over = await page.evaluate(arrangeInPage, laid, area)
  if (over.length > 0) throw noRoom(`pages are overfull: ${over.join(', ')}`)
  await endSection(page, area)
}
