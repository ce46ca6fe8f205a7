import type { SearchIndex } from '../../model/search.ts'
import { element } from '../element.ts'
import { bestLine, marked } from './best-line.ts'
import { type Hit, rank } from './rank.ts'

/** So many results are shown: who finds nothing among them types another word. */
const shownAtMost = 12

/** A screen reader is told of the results when nobody types any more, ms. */
const pause = 700

/** A text in which the words that led to it are marked. */
const withMarks = (text: string, words: readonly string[]): Node[] =>
  marked(text, words).map((piece, i) =>
    i % 2 === 1 ? element('mark', piece) : document.createTextNode(piece),
  )

function result({ entry, words }: Hit, { entries, kinds }: SearchIndex): HTMLElement {
  const found = entries[entry]
  if (!found) return element('li')
  const [href, kind, title] = found
  const link = element('a', element('b', ...withMarks(title, words)))
  link.href = href
  const what = element('span', kinds[kind] ?? '')
  what.className = 'kind'
  const line = element('span', ...withMarks(bestLine(found, words), words))
  line.className = 'line'
  link.append(' ', what, ' ', line)
  return element('li', link)
}

/**
 * Follows the field of the search page.
 * @param keep Is told each query, so that it can be found again.
 * @returns what shows the results of another query; undefined where the page is none of a search.
 */
export function searchPage(
  index: SearchIndex,
  page: ParentNode,
  keep: (query: string) => void,
): ((query: string) => void) | undefined {
  const form = page.querySelector<HTMLFormElement>('form.find')
  const field = form?.querySelector('input')
  const list = page.querySelector<HTMLElement>('.hits')
  const said = page.querySelector<HTMLElement>('.said')
  const all = page.querySelector<HTMLElement>('.all')
  if (!form || !field || !list || !said || !all) return undefined
  let timer = 0
  const show = (): void => {
    const query = field.value.trim()
    const hits = rank(query, index)
    list.replaceChildren(...hits.slice(0, shownAtMost).map((hit) => result(hit, index)))
    list.hidden = hits.length === 0
    all.hidden = hits.length > 0
    const { none = '', found = '' } = said.dataset
    const words = hits.length > 0 ? found.replace('{count}', String(hits.length)) : none
    clearTimeout(timer)
    timer = setTimeout(() => {
      said.textContent = query === '' ? '' : words
    }, pause)
    keep(query)
  }
  // The first search takes longest, since the whole index is read: it is over before anybody types.
  setTimeout(() => rank(index.entries[0]?.[2] ?? '', index))
  field.addEventListener('input', show)
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    show()
    list.querySelector('a')?.focus()
  })
  return (query) => {
    field.value = query
    show()
  }
}
