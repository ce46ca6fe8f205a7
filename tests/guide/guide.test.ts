import { existsSync, readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import dictionary from 'dictionary-en'
import { fleschKincaid } from 'flesch-kincaid'
import nspell from 'nspell'
import remarkParse from 'remark-parse'
import { syllable } from 'syllable'
import { unified } from 'unified'
import { visit } from 'unist-util-visit'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import writing from '../../shared/writing.json' with { type: 'json' }
import { entryAbout } from '../../src/model/entry-about.ts'
import { readYaml } from '../../src/read/read-yaml.ts'
import { checkFacility } from '../../src/validate/check-facility.ts'
import { groupsOf } from '../../src/validate/schema-advice/schema-keys.ts'
import { facility } from '../../src/validate/schemas/facility.ts'
import { entriesPage } from './entries-page.ts'

const root = process.cwd()
const docs = path.join(root, 'docs')
const read = (file: string): string => readFileSync(path.join(root, file), 'utf8')

const pages = ['README.md', ...readdirSync(docs).map((name) => `docs/${name}`)].filter((file) =>
  file.endsWith('.md'),
)

/** Pages that somebody has written for those who run a track. */
const written = pages.filter((file) => file !== 'docs/entries.md' && file !== 'README.md')

/** What stands on a page: where it leads, its code, and its words. */
function partsOf(file: string) {
  const links: string[] = []
  const fences: { readonly lang: string; readonly text: string }[] = []
  const code: string[] = []
  const sentences: string[] = []
  const tree = unified().use(remarkParse).parse(read(file))
  visit(tree, (node) => {
    if (node.type === 'link' || node.type === 'image') links.push(node.url)
    if (node.type === 'code') fences.push({ lang: node.lang ?? '', text: node.value })
    if (node.type === 'inlineCode') code.push(node.value)
    if (node.type !== 'paragraph' && node.type !== 'heading') return
    const words: string[] = []
    visit(node, 'text', (text) => void words.push(text.value))
    const text = words.join(' ')
    // Tables of this parser are paragraphs; their cells are no sentences.
    if (!text.includes('|')) sentences.push(...text.split(/(?<=[.!?:])\s+/))
  })
  return { links, fences, code, sentences }
}

/** Names under which headings of a page are reached. */
const headingsOf = (file: string): readonly string[] =>
  [...read(file).matchAll(/^#+ (.*)$/gm)].map(([, words = '']) =>
    words
      .toLowerCase()
      .replace(/[^\w\s-]/g, '')
      .replaceAll(' ', '-'),
  )

const wordsIn = (text: string): readonly string[] => text.match(/[A-Za-z][A-Za-z'’]*/g) ?? []

const scripts = Object.keys((JSON.parse(read('package.json')) as { scripts: object }).scripts)

describe.each(pages)('%s', (file) => {
  const { links, fences, code } = partsOf(file)

  it('leads nowhere that is not there', () => {
    const inside = links.filter((url) => !/^https?:/.test(url))
    const gone = inside.filter((url) => {
      const [name = '', heading] = url.split('#')
      const target = name === '' ? file : path.join(path.dirname(file), name)
      return (
        !existsSync(path.join(root, target)) ||
        (heading !== undefined && !headingsOf(target).includes(heading))
      )
    })
    expect(gone).toEqual([])
  })

  it('names commands that there are', () => {
    const named = [...code, ...fences.map((f) => f.text)].join('\n').matchAll(/npm run ([a-z:]+)/g)
    expect([...named].map(([, name]) => name).filter((n) => !scripts.includes(n ?? ''))).toEqual([])
  })

  it('shows entries that a facility may have', () => {
    const base = {
      id: 'our-fair',
      name: 'Our County Fair',
      place: { town: 'Hollow Creek' },
      units: 'us',
      paper: 'letter',
      oval: { lap: '2,640 ft', straight: '600 ft' },
      cushion: { material: 'stone-dust' },
    }
    for (const { lang, text } of fences) {
      if (lang !== 'yaml') continue
      const all = JSON.stringify({
        ...base,
        ...(parse(text.replaceAll('A. Name', 'Pat Roe')) as object),
      })
      const { value } = readYaml({ path: 'facility.yaml', text: all })
      if (!value) throw new Error(text)
      const { problems } = checkFacility(value)
      expect(problems.filter((p) => p.severity === 'error')).toEqual([])
    }
  })
})

describe.each(written)('%s', (file) => {
  const { code, sentences } = partsOf(file)

  it('names entries that there are', () => {
    const tops = new Set(groupsOf(facility)[0]?.keys)
    const dotted = code.filter(
      (c) =>
        /^[a-z-]+(\.[a-z-]+)+$/.test(c) &&
        !/\.(?:pdf|csv|xlsx|yaml)$/.test(c) &&
        tops.has(c.split('.')[0] ?? ''),
    )
    expect(dotted.filter((c) => entryAbout(c.split('.')) === undefined)).toEqual([])
  })

  it('is spelt right', () => {
    const spell = nspell(Buffer.from(dictionary.aff), Buffer.from(dictionary.dic))
    for (const word of writing.accepted) spell.add(word)
    const words = new Set(sentences.flatMap(wordsIn))
    const isRight = (w: string): boolean =>
      /^[A-Z]{2,}s$/.test(w) || spell.correct(w) || spell.correct(w.replace(/['’]s$/, ''))
    expect([...words].filter((w) => !isRight(w))).toEqual([])
  })

  it('can be read by whoever can read the manual', () => {
    const words = sentences.flatMap(wordsIn)
    const grade = fleschKincaid({
      sentence: sentences.filter((s) => wordsIn(s).length > 0).length,
      word: words.length,
      syllable: words.reduce((sum, w) => sum + syllable(w), 0),
    })
    expect(grade).toBeLessThanOrEqual(6)
  })
})

describe('the list of all entries', () => {
  it('is that of the program (npm run guide makes it anew)', () =>
    expect(read('docs/entries.md')).toBe(entriesPage(facility)))

  it('says of each entry what it is', () => {
    const paths = groupsOf(facility).flatMap((g) => g.keys.map((key) => [...g.path, key]))
    const unsaid = paths.filter((p) => entryAbout(p) === undefined).map((p) => p.join('.'))
    expect(unsaid).toEqual([])
  })
})
