import path from 'node:path'
import { HtmlValidate } from 'html-validate'
import { beforeAll, describe, expect, it } from 'vitest'
import { loadIcons } from '../../../src/cli/load/load-icons.ts'
import { filesOffered } from '../../../src/render/site/papers.ts'
import { policy, renderSite } from '../../../src/render/site/render-site.ts'
import { workbookPath } from '../../../src/render/tables/tables.ts'
import { assetsFor, demoManual, demos, folders } from '../../support/demo.ts'

const rules = new HtmlValidate({
  extends: ['html-validate:recommended'],
  rules: {
    'doctype-style': 'off',
    'attr-quotes': 'off',
    'long-title': 'off',
    'no-trailing-whitespace': 'off',
    'void-style': 'off',
    'no-inline-style': 'off',
    'no-raw-characters': 'off',
    'prefer-native-element': 'off',
    'tel-non-breaking': 'off',
    'element-permitted-content': 'error',
  },
})

const pages = new Map<string, ReadonlyMap<string, string>>()

beforeAll(async () => {
  for (const id of demos) {
    const { manual, words } = await demoManual(id)
    pages.set(
      id,
      new Map(renderSite(manual, await assetsFor(words, 'linked')).map((f) => [f.path, f.data])),
    )
  }
})

const htmlOf = (id: string): [string, string][] =>
  [...(pages.get(id) ?? [])].filter(([p]) => p.endsWith('.html'))

/** They lie beside what is rendered. */
const beside = new Set([
  ...(await loadIcons(folders)).map(({ path: name }) => `assets/${name}`),
  workbookPath,
])

describe.each(demos)('site of %s', (id) => {
  it('has pages for tasks, symptoms, numbers, safety, training, the board and every worksheet', async () => {
    const { manual } = await demoManual(id)
    const names = new Set(pages.get(id)?.keys())
    for (const page of [
      'index',
      'symptoms',
      'procedures',
      'numbers',
      'reckoners',
      'safety',
      'learn',
      'findings',
      'facility',
      'terms',
    ])
      expect(names.has(`${page}.html`), page).toBe(true)
    for (const p of manual.procedures) expect(names.has(`procedures/${p.id}.html`)).toBe(true)
    for (const w of manual.worksheets) expect(names.has(`worksheets/${w.id}.html`)).toBe(true)
  })

  it('has the emergency number, page and first steps one touch from every page', () => {
    for (const [name, text] of htmlOf(id)) {
      const up = name.includes('/') ? '../' : ''
      const bar = /<nav class="bar".*?<\/nav>/s.exec(text)?.[0] ?? ''
      expect([...bar.matchAll(/href="([^"]*)"/g)].map((m) => m[1])).toEqual([
        'tel:911',
        `${up}emergency.html`,
        `${up}procedures/loose-horse.html`,
        `${up}procedures/accident.html`,
      ])
    }
  })

  it('calls every page by its title and the facility', async () => {
    const { manual } = await demoManual(id)
    const titles = htmlOf(id).map(([, text]) => /<title>(.*?)<\/title>/.exec(text)?.[1] ?? '')
    for (const title of titles) expect(title).toMatch(new RegExp(`^.+ · ${manual.facility.name}$`))
    expect(new Set(titles).size).toBe(titles.length)
  })

  it('leads from every procedure to its posted sheet, and from the first page to all papers, with sizes', async () => {
    const { manual, words } = await demoManual(id)
    const all = filesOffered(manual, words)
    const files = new Map([...all].map((file) => [file, { bytes: 1_240_000 }]))
    const printed = new Map(
      renderSite(manual, await assetsFor(words, 'linked'), files).map((f) => [f.path, f.data]),
    )
    for (const p of manual.procedures)
      expect(printed.get(`procedures/${p.id}.html`)).toContain(`href="../sheets/${p.id}.pdf"`)
    for (const file of ['binder', 'field-book', 'handout', 'sheets/sheets', 'forms', 'cards'])
      expect(printed.get('index.html')).toMatch(
        new RegExp(`href="${file}\\.pdf"><strong>[^<]+</strong> <span class="soft">PDF, 1\\.2 MB<`),
      )
    expect(printed.get('emergency.html')).toContain('href="sheets/emergency.pdf"')
    const older = { revision: '2', date: '2026-05-01' }
    const old = new Map([...all].map((file) => [file, { bytes: 1_240_000, older }]))
    const home = renderSite(manual, await assetsFor(words, 'linked'), old).find(
      (f) => f.path === 'index.html',
    )
    expect(home?.data).toContain('PDF, 1.2 MB; OLD: revision 2, 2026-05-01<')
    for (const [, text] of htmlOf(id)) expect(text).not.toMatch(/href="[^"]*\.pdf"/)
  })

  it('has only links that lead somewhere inside', () => {
    const ids = new Map(
      htmlOf(id).map(([p, text]) => [
        p,
        new Set([...text.matchAll(/\sid="([^"]+)"/g)].map((m) => m[1])),
      ]),
    )
    for (const [from, text] of htmlOf(id)) {
      for (const [, href = ''] of text.matchAll(/\b(?:href|src)="([^"]*)"/g)) {
        if (/^(tel|geo|maps):/.test(href)) continue
        expect(href, from).not.toMatch(/^[a-z]+:|^\/|^$/)
        const [file = '', anchor] = href.split('#')
        const target = file === '' ? from : path.posix.join(path.posix.dirname(from), file)
        const isThere = ids.has(target) || pages.get(id)?.has(target) || beside.has(target)
        expect(isThere, `${from} → ${href}`).toBe(true)
        if (anchor !== undefined)
          expect(ids.get(target)?.has(anchor), `${from} → ${href}`).toBe(true)
      }
    }
  })

  it('asks for nothing outside, and says so to the browser; scripts and styles stand in files', () => {
    for (const [name, text] of pages.get(id) ?? [])
      expect(text, name).not.toMatch(/https?:\/\/(?!www\.w3\.org)|@import|url\((?!fonts\/)/)
    for (const [name, text] of htmlOf(id)) {
      expect(text, name).toContain(policy)
      expect(text, name).not.toMatch(
        /<script(?! defer src="[./a-z-]+"><\/script>)| style=|<style| on[a-z]+="/,
      )
    }
  })

  it('is valid HTML with headings in order', async () => {
    for (const [name, text] of htmlOf(id)) {
      const report = await rules.validateString(text)
      expect(
        report.results
          .flatMap((r) =>
            r.messages
              .filter((m) => m.severity === 2)
              .map((m) => `${name}:${m.line} ${m.ruleId} ${m.message}`),
          )
          .slice(0, 5),
      ).toEqual([])
    }
  })

  it('shows every figure of the manual under numbers, with its worksheet', async () => {
    const { manual } = await demoManual(id)
    const numbers = pages.get(id)?.get('numbers.html') ?? ''
    for (const w of manual.worksheets) expect(numbers).toContain(`worksheets/${w.id}.html`)
  })
})
