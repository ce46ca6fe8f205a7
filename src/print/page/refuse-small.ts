import { noRoom } from './no-room.ts'
import type { LayingPage } from './open-page.ts'

/** Smaller type is not read in a drawing, points. */
const least = 8

type Limits = { readonly least: number; readonly width: number | undefined }

/** Words in drawings that would be printed smaller, with their size in points. */
function smallerInPage({ least, width }: Limits): readonly string[] {
  const { body } = document
  const before = body.style.getPropertyValue('width')
  if (width !== undefined) body.style.setProperty('width', `${width}px`)
  const small = [...document.querySelectorAll('.drawing svg')].flatMap((svg) => {
    const units = Number((svg.getAttribute('viewBox') ?? '').split(' ')[2])
    const points = (svg.getBoundingClientRect().width * 0.75) / units
    return [...globalThis.drawings.partsOf(svg).querySelectorAll('text')].flatMap((t) => {
      const size = Number(t.getAttribute('font-size')) * points
      // A drawing that is not shown has no width.
      return size > 0 && size < least - 0.01
        ? [`${size.toFixed(1)} pt: ${t.textContent ?? ''}`]
        : []
    })
  })
  body.style.setProperty('width', before)
  return small
}

/**
 * Makes sure that every word in a drawing can be read.
 * @param width Of the text, CSS pixels; undefined where pages have their own width already.
 * @throws Error with the words that are too small.
 */
export async function refuseSmall(page: LayingPage, width?: number): Promise<void> {
  const small = await page.evaluate(smallerInPage, { least, width })
  if (small.length > 0)
    throw noRoom(`type in a drawing under ${least} pt: ${small.slice(0, 6).join(' | ')}`)
}
