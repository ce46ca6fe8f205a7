import { placeId, placeOf } from './place.ts'

/** Attributes that name places on the same page, several by spaces. */
const naming = [
  'id',
  'for',
  'aria-labelledby',
  'aria-describedby',
  'aria-controls',
  'list',
  'headers',
]

/** What names or leads, with what stands before it. */
const telling = new RegExp(
  `(\\s(?:${naming.join('|')})=")([^"]+)|(\\shref=")([^"]*)|(url\\(#)([^)]+)`,
  'g',
)

/** Whether a place stands in a tag, not in words. */
function isInTag(text: string, at: number): boolean {
  const start = text.lastIndexOf('<', at)
  return start > text.lastIndexOf('>', at) && /[a-z]/i.test(text.charAt(start + 1))
}

/** What loads a script is gone, and what pages hold for a script of their own alone. */
const withoutScripts = (text: string): string =>
  text
    .replace(/<!--script-->.*?<!--\/script-->\n?/gs, '')
    .replace(/<script[^>]*><\/script>\n?/g, '')

/**
 * A page as it stands in the file: its ids begin with those of the page, its links lead inside the
 * file, and what loads a script is gone.
 * @param text What the project itself has made: attributes stand in double quotes.
 * @throws RangeError for a link to what is no page.
 */
export function inOneFile(text: string, page: string, pages: ReadonlySet<string>): string {
  const own = (id: string): string => placeId(page, id)
  const changed = (
    whole: string,
    naming: string | undefined,
    ids: string,
    leading: string | undefined,
    href: string,
    drawn: string,
    id: string,
    at: number,
    all: string,
  ): string => {
    if (!isInTag(all, at)) return whole
    if (naming !== undefined) return naming + ids.split(' ').map(own).join(' ')
    return leading === undefined ? drawn + own(id) : leading + placeOf(href, page, pages)
  }
  return withoutScripts(text).replace(telling, changed)
}
