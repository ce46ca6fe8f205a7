import { mkdir, writeFile } from 'node:fs/promises'
import path from 'node:path'

// The same pages for a general-purpose site generator, as far as it can make them: their words in
// Markdown, one layout with the head, the bar and the whole menu of our pages. Numbers, drawings,
// formulas, search index, scripts and the manual in one file are not among its work.

/** The program of the generator (Eleventy, MIT). */
export const generatorIn = (project: string): string =>
  path.join(project, 'node_modules', '@11ty', 'eleventy', 'cmd.cjs')

const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"' }

/** Words of a piece of HTML; what would mean something to Markdown stands behind a backslash. */
const wordsOf = (html: string): string =>
  html
    .replace(/<(svg|math|template|script)\b.*?<\/\1>/gs, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/&(\w+);/g, (whole, name: string) => entities[name] ?? whole)
    .replace(/([\\`*_[\]<>#|{}])/g, '\\$1')
    .replace(/\s+/g, ' ')
    .trim()

const cellsOf = (row: string): string[] =>
  (row.match(/<t[hd]\b.*?(?=<t[hd]\b|<\/tr>|$)/gs) ?? []).map(wordsOf)

/** Rows of a table, the first as its heads. */
function tableOf(inside: string): string {
  const [heads = [], ...rows] = inside
    .split(/<tr\b[^>]*>/)
    .map(cellsOf)
    .filter((r) => r.length > 0)
  const lines = [heads, heads.map(() => '---'), ...rows]
  return lines.map((cells) => `| ${cells.join(' | ')} |`).join('\n')
}

/** Headings, paragraphs, items and rows of a page, in their order. */
function markdownOf(page: string): string {
  const body = /<main\b[^>]*>(.*)<\/main>/s.exec(page)?.[1] ?? ''
  const pieces = body.matchAll(
    /<(h[1-4]|p|li|dt|dd|caption|figcaption|summary)\b[^>]*>(.*?)(?=<\/?(?:h[1-4]|p|li|dt|dd|caption|summary|ul|ol|tr|table|section|details)\b)|<t(?:head|body)\b[^>]*>(.*?)<\/table>/gs,
  )
  return [...pieces]
    .map(([, tag, inside = '', row]) => {
      if (row !== undefined) return tableOf(row)
      const words = wordsOf(inside)
      if (words === '') return ''
      if (tag?.startsWith('h')) return `${'#'.repeat(Number(tag[1]))} ${words}`
      return tag === 'li' ? `- ${words}` : words
    })
    .filter((text) => text !== '')
    .join('\n\n')
}

const layout = (bar: string, menu: string): string => `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>{{ title }}</title><link rel="stylesheet" href="/assets/site.css"></head>
<body>${bar}<nav><ul>{% for entry in menu %}<li><a href="{{ entry.href }}"{% if entry.href == page.url %} aria-current="page"{% endif %}>{{ entry.title }}</a></li>{% endfor %}</ul></nav>
<details><summary>${menu}</summary><ul>{% for entry in collections.all %}<li><a href="{{ entry.url }}">{{ entry.data.title }}</a></li>{% endfor %}</ul></details>
<main>{{ content | safe }}</main></body></html>
`

const titleOf = (page: string): string => /<title>(.*?)<\/title>/s.exec(page)?.[1] ?? ''

/**
 * Writes what the generator is given.
 * @param pages Our own pages by path.
 * @returns how many pages there are, and how many bytes of Markdown.
 */
export async function writeSources(
  folder: string,
  pages: ReadonlyMap<string, string>,
): Promise<{ readonly pages: number; readonly bytes: number }> {
  const home = pages.get('index.html') ?? ''
  const menu = [...home.matchAll(/<li><a href="([a-z-]+\.html)">([^<]+)<\/a>/g)].map((m) => ({
    href: `/${m[1]}`,
    title: m[2],
  }))
  const bar = /<body[^>]*>(.*?)<main/s.exec(home)?.[1] ?? ''
  await mkdir(path.join(folder, '_includes'), { recursive: true })
  await mkdir(path.join(folder, '_data'), { recursive: true })
  await writeFile(
    path.join(folder, '_includes', 'page.njk'),
    layout(`{% raw %}${wordsOf(bar)}{% endraw %}`, 'All pages'),
  )
  await writeFile(path.join(folder, '_data', 'menu.json'), JSON.stringify(menu))
  let bytes = 0
  for (const [file, page] of pages) {
    const head = {
      layout: 'page.njk',
      title: titleOf(page),
      permalink: file,
      templateEngineOverride: 'md',
    }
    const text = markdownOf(page)
    bytes += Buffer.byteLength(text)
    const target = path.join(folder, file.replace(/\.html$/, '.md'))
    await mkdir(path.dirname(target), { recursive: true })
    await writeFile(target, `---json\n${JSON.stringify(head)}\n---\n\n${text}\n`)
  }
  return { pages: pages.size, bytes }
}
