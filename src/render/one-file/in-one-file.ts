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

const named = new RegExp(`(?<=\\s(?:${naming.join('|')})=")[^"]+`, 'g')

/** What a tag holds that names or leads; most are lines of drawings and hold nothing of it. */
const telling = [...naming.map((name) => `${name}="`), 'url(#', 'href="']

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
export const inOneFile = (text: string, page: string, pages: ReadonlySet<string>): string =>
  withoutScripts(text).replace(/<[a-z][^>]*>/gi, (tag) =>
    telling.some((part) => tag.includes(part))
      ? tag
          .replace(named, (ids) =>
            ids
              .split(' ')
              .map((id) => placeId(page, id))
              .join(' '),
          )
          .replace(/(?<=url\(#)[^)]+/g, (id) => placeId(page, id))
          .replace(/(?<=\shref=")[^"]*/g, (href) => placeOf(href, page, pages))
      : tag,
  )
