import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import { createRequire } from 'node:module'
import os from 'node:os'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { PDFDocument } from '@cantoo/pdf-lib'
import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { build } from '../../src/cli/build.ts'
import type { Io } from '../../src/cli/io.ts'
import { findBrowser } from '../../src/print/browser/find-browser.ts'
import { brokenRules } from '../../src/print/inspect/pdf-rules.ts'
import { margins } from '../../src/render/binder/page-rules.ts'
import { renderForms } from '../../src/render/forms/render-forms.ts'
import { assetsFor, date, demoFolder, demoManual } from '../support/demo.ts'
import { overlaps, textBoxes } from '../support/text-boxes.ts'

/**
 * One on letter paper with everything, one on A4 with little; a third would cost a minute and show
 * nothing new.
 */
const demos = ['larkmoor', 'brambleford'] as const

let root: string
const said: string[] = []
const io = (): Io => ({
  out: (t) => said.push(t),
  err: (t) => said.push(t),
  colors: false,
  terminal: false,
  env: process.env,
  cwd: root,
  today: date,
})

const at = (run: string, id: string, ...rest: string[]): string => path.join(root, run, id, ...rest)

const open = async (file: string): Promise<PDFDocumentProxy> =>
  getDocument({ data: new Uint8Array(await readFile(file)), verbosity: 0 }).promise

const number = /^(?:[ivxl]+|\d+-\d+)$/

const textOf = async (pdf: PDFDocumentProxy, page: number): Promise<string> => {
  const content = await (await pdf.getPage(page)).getTextContent()
  return content.items
    .map((i) => ('str' in i ? i.str : ''))
    .join(' ')
    .replace(/\s+/g, ' ')
}

beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'manual-'))
  for (const id of demos)
    expect(
      await build(demoFolder(id), { into: path.join(root, 'a'), date }, io()),
      said.join('\n'),
    ).toBe(0)
  // A folder of its own to keep prints in: what the first build has kept would always be the same.
  expect(
    await build(
      demoFolder('brambleford'),
      { into: path.join(root, 'b'), date, quiet: true },
      { ...io(), env: { ...process.env, XDG_CACHE_HOME: path.join(root, 'cache') } },
    ),
  ).toBe(0)
}, 480_000)

afterAll(() => rm(root, { recursive: true, force: true }))

describe.each(demos)('binder of %s', (id) => {
  const binder = (): Promise<PDFDocumentProxy> => open(at('a', id, 'binder.pdf'))

  it('prints beside every link of the contents and of the index the page to which it leads', async () => {
    const pdf = await binder()
    const labels = (await pdf.getPageLabels()) ?? []
    const { manual } = await demoManual(id)
    const led = new Set<string>()
    let isIndex = false
    for (let n = 1; n <= pdf.numPages; n++) {
      const page = await pdf.getPage(n)
      const text = await textOf(pdf, n)
      const inFront = /^[ivx]+$/.test(labels[n - 1] ?? '')
      // The index goes on to the end of the binder.
      isIndex ||= !inFront && /Index of terms/.test(text)
      if (!inFront && !isIndex) continue
      const items = (await page.getTextContent()).items.flatMap((i) =>
        'str' in i && i.str.trim() !== ''
          ? [
              {
                str: i.str.trim(),
                x: i.transform[4] as number,
                y: i.transform[5] as number,
                right: (i.transform[4] as number) + i.width,
              },
            ]
          : [],
      )
      for (const a of await page.getAnnotations()) {
        if (a.subtype !== 'Link' || typeof a.dest !== 'string') continue
        const [left, low, right, high] = a.rect as [number, number, number, number]
        if (right - left < 2) continue
        const label =
          labels[await pdf.getPageIndex((await pdf.getDestination(a.dest))?.[0] as never)]
        const inRow = items.filter((i) => i.y > low - 1 && i.y < high).sort((p, q) => p.x - q.x)
        const own = inRow
          .filter((i) => i.x > left - 2 && i.right < right + 2)
          .map((i) => i.str)
          .join('')
          .replaceAll(',', '')
        // In the index the number itself is the link; in contents and lists it stands at the end of
        // the row, which may be that of a column.
        const printed = isIndex
          ? own
          : (inRow.find((i) => i.x > right && number.test(i.str))?.str ?? '')
        if (!number.test(printed)) continue
        expect(printed, `${a.dest} on page ${labels[n - 1]}`).toBe(label)
        led.add(a.dest)
      }
    }
    for (const p of manual.procedures) expect(led).toContain(`procedure-${p.id}`)
    for (const { places } of manual.termIndex)
      if (places[0] !== undefined) expect(led).toContain(places[0])
    for (const r of manual.reckoners) expect(led).toContain(`reckoner-${r.id}`)
    expect(led).toContain('drawing-plan')
  })

  it('labels its pages roman in front and by section behind, as printed', async () => {
    const pdf = await binder()
    const labels = (await pdf.getPageLabels()) ?? []
    const { manual } = await demoManual(id)
    expect(labels).toHaveLength(pdf.numPages)
    expect(labels.slice(0, 4)).toEqual(['i', 'ii', 'iii', 'iv'])
    expect(new Set(labels.filter((l) => l !== '')).size).toBe(labels.filter((l) => l !== '').length)
    for (const s of manual.sections) expect(labels).toContain(`${s.number}-1`)
    for (const [i, label] of labels.entries())
      if (i > 1 && /-|^[ivx]+$/.test(label))
        expect((await textOf(pdf, i + 1)).replace(/(\d)- (\d)/g, '$1-$2'), `page ${i + 1}`).toMatch(
          new RegExp(`(?:^| )${label}(?: |$)`),
        )
  })

  it('begins its sections where the facility asks for it', async () => {
    const labels = (await (await binder()).getPageLabels()) ?? []
    const { manual } = await demoManual(id)
    const { sections, dividers } = manual.facility.binder
    for (const s of manual.sections) {
      const first = labels.indexOf(`${s.number}-1`)
      if (sections === 'right-hand') expect(first % 2, s.title).toBe(0)
      if (dividers === 'leaves')
        expect([labels[first - 2], labels[first - 1]]).toEqual([String(s.number), ''])
    }
  })

  it('has bookmarks for sections and procedures, a title and a language', async () => {
    const pdf = await binder()
    const { manual } = await demoManual(id)
    const outline = (await pdf.getOutline()) ?? []
    const spaced = (title: string): string => title.replace(/\s+/g, ' ').trim()
    for (const section of manual.sections) {
      const found = outline.find((i) => spaced(i.title) === `${section.number} ${section.title}`)
      const own = section.procedures.flatMap((id) => manual.procedures.filter((p) => p.id === id))
      expect(
        found?.items.map((i) => spaced(i.title)),
        section.title,
      ).toEqual(own.map((p) => `${p.number} ${p.title}`))
      for (const [i, p] of own.entries())
        for (const m of p.methods)
          expect(found?.items[i]?.items.map((x: { title: string }) => spaced(x.title))).toContain(
            m.title,
          )
    }
    // A divider names its section, but leads nowhere else.
    for (const section of manual.sections)
      expect(outline.map((i) => spaced(i.title))).not.toContain(section.title)
    // What reaches out of the top of a page would stand twice in its bookmark.
    const titles = (items: typeof outline): string[] =>
      items.flatMap((i) => [i.title, ...titles(i.items)])
    for (const title of titles(outline)) expect(title).not.toMatch(/^(.{2,})\1$/)
    const info = (await pdf.getMetadata()).info as Record<string, unknown>
    expect(info['Title']).toBe(`${manual.facility.name}: Track manual`)
    expect(info['Language']).toBe('en')
    expect(await pdf.getMarkInfo()).toMatchObject({ Marked: true })
  })

  it('holds every worksheet, and every internal link leads to what it names', async () => {
    const pdf = await binder()
    const { manual } = await demoManual(id)
    const pages = await Promise.all(
      Array.from({ length: pdf.numPages }, (_, i) => textOf(pdf, i + 1)),
    )
    const all = pages.join(' ')
    for (const w of manual.worksheets) expect(all, w.number).toContain(`${w.number} ${w.title}`)
    const heads = new Map([
      ...manual.procedures.map((p): [string, string] => [
        `procedure-${p.id}`,
        `${p.number} ${p.title}`,
      ]),
      ...manual.worksheets.map((w): [string, string] => [
        `worksheet-${w.id}`,
        `${w.number} ${w.title}`,
      ]),
    ])
    const wrong: string[] = []
    let numbered = 0
    for (let n = 1; n <= pdf.numPages; n++) {
      const page = await pdf.getPage(n)
      const items = (await page.getTextContent()).items.flatMap((i) =>
        'str' in i
          ? [
              {
                str: i.str,
                x: (i.transform[4] as number) + i.width / 2,
                y: (i.transform[5] as number) + i.height / 3,
              },
            ]
          : [],
      )
      for (const a of await page.getAnnotations()) {
        if (a.subtype !== 'Link' || a.url !== undefined) continue
        const target = typeof a.dest === 'string' ? await pdf.getDestination(a.dest) : a.dest
        expect(target?.[0], JSON.stringify(a.dest)).toBeDefined()
        const head = heads.get(a.dest as string)
        if (head === undefined) continue
        const there = (pages[await pdf.getPageIndex(target?.[0] as never)] ?? '').replace(/\s/g, '')
        if (!there.includes(head.replace(/\s/g, '')))
          wrong.push(`page ${n}: ${a.dest} leads to a page without ${head}`)
        const [left, low, right, high] = a.rect as [number, number, number, number]
        const printed = items
          .filter((i) => i.x > left && i.x < right && i.y > low && i.y < high)
          .map((i) => i.str.trim())
          .join(' ')
        // A figure that leads to its worksheet may read like the number of a procedure.
        const named = (head.startsWith('W-') ? /W-\d+/ : /(?<=^|\s)\d+\.\d+(?=\s|$)/).exec(
          printed,
        )?.[0]
        if (named === undefined) continue
        numbered++
        if (!head.startsWith(`${named} `)) wrong.push(`page ${n}: “${printed}” leads to ${head}`)
      }
    }
    expect(wrong).toEqual([])
    expect(numbered).toBeGreaterThan(manual.procedures.length)
  })

  it('says of every page without text that it is left blank', async () => {
    const pdf = await binder()
    for (let n = 1; n <= pdf.numPages; n++) expect(await textOf(pdf, n), `page ${n}`).toMatch(/\S/)
  })

  it('is on the paper of the facility', async () => {
    const { manual } = await demoManual(id)
    const { width, height } = (await (await binder()).getPage(1)).getViewport({ scale: 1 })
    expect([Math.round(width), Math.round(height)]).toEqual(
      manual.facility.paper === 'letter' ? [612, 792] : [595, 842],
    )
  })

  it('has one page for each posted sheet on every paper and in both inks, with all its steps', async () => {
    const { manual } = await demoManual(id)
    const sizes = { letter: [612, 792], tabloid: [792, 1224], a4: [595, 842], a3: [842, 1191] }
    const [usual] = manual.facility.sheetPapers
    for (const paper of manual.facility.sheetPapers) {
      for (const ink of ['', '-black']) {
        const end = `${paper === usual ? '' : `-${paper}`}${ink}.pdf`
        for (const p of manual.procedures) {
          const pdf = await open(at('a', id, 'sheets', `${p.id}${end}`))
          expect(pdf.numPages, p.id).toBe(1)
          const view = (await pdf.getPage(1)).getViewport({ scale: 1 })
          expect([Math.round(view.width), Math.round(view.height)], `${p.id} on ${paper}`).toEqual(
            sizes[paper],
          )
          const text = (await textOf(pdf, 1)).replace(/\s/g, '')
          expect(text, p.id).toContain(p.title.replace(/\s/g, ''))
          for (const s of p.sheet.steps)
            expect(text, p.id).toContain(s.do.replace(/\{[^}]*\}.*$/, '').replace(/\s/g, ''))
          expect(text).toMatch(/Stepsreadwellto\d/)
        }
        const emergency = await open(at('a', id, 'sheets', `emergency${end}`))
        expect(emergency.numPages).toBe(1)
        const said = await textOf(emergency, 1)
        for (const c of [...manual.emergency.stops, ...manual.emergency.contacts])
          expect(said, c.role).toContain(c.phone)
        expect(said).toMatch(/Steps read well to \d/)
        expect((await open(at('a', id, 'sheets', `sheets${end}`))).numPages).toBe(
          manual.procedures.length + 1,
        )
      }
    }
  })
})

describe.each(demos)('forms of %s', (id) => {
  /** Title and names of the places to write on each page, as rendered. */
  async function pagesOf(): Promise<
    readonly { readonly title: string; readonly fields: readonly string[] }[]
  > {
    const { manual, words } = await demoManual(id)
    const sections = renderForms(manual, await assetsFor(words, 'inline'))
      .body.split('<section class="form')
      .slice(1)
    return sections.map((text) => ({
      title: (/<h1>([^<]*)/.exec(text)?.[1] ?? '').trim().replaceAll('&#x27;', "'"),
      fields: [...text.matchAll(/data-field="([^"]*)"/g)].map((m) => m[1] ?? ''),
    }))
  }

  it('have one page for each page of a form, and a named field with a tooltip in every place to write', async () => {
    const pages = await pagesOf()
    const pdf = await open(at('a', id, 'forms.pdf'))
    expect(pdf.numPages).toBe(pages.length)
    for (const [i, { title, fields }] of pages.entries()) {
      expect(await textOf(pdf, i + 1)).toContain(title)
      const widgets = (await (await pdf.getPage(i + 1)).getAnnotations()).filter(
        (a) => a.subtype === 'Widget',
      )
      expect(widgets.map((w) => w.fieldName).sort(), title).toEqual([...fields].sort())
      for (const w of widgets) expect(w.alternativeText, w.fieldName).toContain(title)
    }
  })

  it('lay no field over another', async () => {
    const pdf = await open(at('a', id, 'forms.pdf'))
    for (let n = 1; n <= pdf.numPages; n++) {
      const boxes = (await (await pdf.getPage(n)).getAnnotations())
        .filter((a) => a.subtype === 'Widget')
        .map((a) => a.rect as [number, number, number, number])
      for (const [i, a] of boxes.entries())
        for (const b of boxes.slice(i + 1))
          expect(
            a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3],
            `form ${n}: ${a} and ${b}`,
          ).toBe(false)
    }
  })
})

describe.each(demos)('PDFs of %s', (id) => {
  it.each(['binder', 'forms', 'cards', 'sheets/sheets', 'sheets/sheets-black', 'sheets/seal'])(
    'keep the rules of sound PDFs: %s',
    async (name) => {
      expect(
        brokenRules(
          await PDFDocument.load(await readFile(at('a', id, `${name}.pdf`)), {
            updateMetadata: false,
          }),
        ),
      ).toEqual([])
    },
  )

  it.each(['binder', 'forms', 'cards', 'sheets/sheets'])(
    'show no words on others, and none beyond the edge of the paper: %s',
    async (name) => {
      const pdf = await open(at('a', id, `${name}.pdf`))
      for (let n = 1; n <= pdf.numPages; n++) {
        const page = await pdf.getPage(n)
        const { width, height } = page.getViewport({ scale: 1 })
        const boxes = await textBoxes(page)
        expect(overlaps(boxes), `page ${n}`).toEqual([])
        for (const b of boxes)
          expect(
            b.left >= 0 && b.right <= width && b.low >= 0 && b.high <= height,
            `“${b.text}” on page ${n}`,
          ).toBe(true)
      }
    },
  )

  it('leave no heading and no caution alone at the foot of a page', async () => {
    const pdf = await open(at('a', id, 'binder.pdf'))
    const labels = (await pdf.getPageLabels()) ?? []
    const { manual } = await demoManual(id)
    const headings = new Set(
      manual.procedures
        .flatMap((p) => [p.title, ...p.methods.map((m) => m.title)])
        .concat([
          'Measure first',
          'Right when',
          'If it is not right',
          'Stop and call',
          'Write down',
          'Why it is done so',
          'Ready reckoners',
          'Questions',
          'Index of terms',
          'The pages of the procedures that use the term.',
        ]),
    )
    // In procedures a step follows every caution; all cautions stand once more in a part of their
    // own.
    const ends = manual.cautions
      .map((c) =>
        c.avoid
          .replace(/[^}]*\}/g, '')
          .replace(/\s/g, '')
          .slice(-16),
      )
      .filter((end) => end.length > 8)
    const sections = new Set(manual.sections.map((s) => String(s.number)))
    for (let n = 1; n <= pdf.numPages; n++) {
      if (!(labels[n - 1] ?? '').includes('-')) continue
      const body = (await textBoxes(await pdf.getPage(n))).filter(
        (b) => b.low > margins.bottom * 72,
      )
      const lowest = Math.min(...body.map((b) => b.low))
      const line = body
        .filter((b) => b.low < lowest + 2)
        .map((b) => b.text)
        .join('')
        .trim()
      expect(
        headings.has(line.replace(/^\d+\.\d+\s*/, '')),
        `“${line}” at the foot of ${labels[n - 1]}`,
      ).toBe(false)
      if (sections.has((labels[n - 1] ?? '').split('-')[0] ?? ''))
        expect(
          ends.find((end) => line.replace(/\s/g, '').endsWith(end)),
          `a caution at the foot of ${labels[n - 1]}`,
        ).toBeUndefined()
    }
  })

  it('keep on one page what is said to stand on one page', async () => {
    const pdf = await open(at('a', id, 'binder.pdf'))
    const { manual } = await demoManual(id)
    const chart = manual.schedules.find((p) => p.id === 'symptom-chart')
    const last = manual.symptoms.at(-1)?.says ?? ''
    const texts = await Promise.all(
      Array.from({ length: pdf.numPages }, (_, i) => textOf(pdf, i + 1)),
    )
    const page = texts.find((t) => t.includes(`${chart?.title} Do the first check`)) ?? ''
    expect(page).toContain(last)
  })

  it('make a binder that is not too large to send', async () => {
    expect((await readFile(at('a', id, 'binder.pdf'))).length).toBeLessThan(6e6)
  })
})

describe('a build', () => {
  it('gives the same bytes for the same input', async () => {
    const names = (await readdir(at('a', 'brambleford'), { recursive: true, withFileTypes: true }))
      .filter((e) => e.isFile())
      .map((e) => path.relative(at('a', 'brambleford'), path.join(e.parentPath, e.name)))
    expect(names.length).toBeGreaterThan(50)
    for (const name of names)
      expect(
        (await readFile(at('a', 'brambleford', name))).equals(
          await readFile(at('b', 'brambleford', name)),
        ),
        name,
      ).toBe(true)
  })

  it('records what went in and what came out', async () => {
    const record = JSON.parse(await readFile(at('a', 'larkmoor', 'build.json'), 'utf8')) as {
      contentHash: string
      facilityHash: string
      files: { path: string; bytes: number }[]
    }
    expect(record.contentHash).toMatch(/^[0-9a-f]{64}$/)
    expect(record.files.map((f) => f.path)).toContain('binder.pdf')
    for (const f of record.files)
      expect((await readFile(at('a', 'larkmoor', f.path))).length).toBe(f.bytes)
  })

  it('says how it went on plain lines when nobody watches, and nothing when asked to be quiet', () => {
    expect(
      said.some((l) =>
        /^Larkmoor County Fair: \d+ site pages, binder of \d+ pages, \d+ sheets; \d+ figures/.test(
          l,
        ),
      ),
    ).toBe(true)
    expect(said.join('')).not.toContain('\u001b')
    expect(said.filter((l) => l.startsWith('Brambleford')).length).toBe(1)
  })
})

describe('site in a browser', () => {
  it('has no accessibility faults, and nothing wider than a phone', async () => {
    const found = await findBrowser(process.env)
    if (found.kind !== 'found') throw new Error(found.message)
    const axe = await readFile(
      createRequire(import.meta.url).resolve('axe-core/axe.min.js'),
      'utf8',
    )
    try {
      for (const id of demos) {
        const page = await found.browser.newPage()
        await page.setViewport({ width: 375, height: 800 })
        for (const name of [
          'index',
          'symptoms',
          'procedures/seal',
          'worksheets/area',
          'numbers',
          'reckoners',
          'safety',
          'hazards',
          'learn',
          'findings',
          'facility',
          'terms',
          'plans',
          'plans/race-days',
          'plans/training',
          'plans/symptom-chart',
        ]) {
          await page.goto(pathToFileURL(at('a', id, 'site', `${name}.html`)).href)
          await page.evaluate(axe)
          const faults = (await page.evaluate(
            'axe.run({ runOnly: ["wcag2a", "wcag2aa", "best-practice"] }).then((r) => r.violations.map((v) => `${v.id}: ${v.nodes[0].html.slice(0, 120)}`))',
          )) as string[]
          expect(faults, `${id} ${name}`).toEqual([])
          expect(
            await page.evaluate('document.documentElement.scrollWidth - window.innerWidth'),
            `${id} ${name}`,
          ).toBeLessThanOrEqual(0)
        }
        await page.close()
      }
    } finally {
      await found.browser.close()
    }
  })
})
