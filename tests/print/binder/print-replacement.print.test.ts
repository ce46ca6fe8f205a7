import { cp, mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openDocument } from '../../../src/print/pdf/documents.ts'
import { demoFolder } from '../../support/demo.ts'
import { brokenRules } from '../../support/pdf-rules/broken-rules.ts'
import { buildInto } from '../../support/printed-demos.ts'
import { openBytes, wordsOn } from '../../support/read-pdf.ts'

let root: string
let facility: string

const made = (name: string): string => path.join(root, 'dist', 'brambleford', name)

/** Opened anew every time: builds write over each other. */
const open = async (name: string): Promise<PDFDocumentProxy> =>
  openBytes(await readFile(made(name)))

/**
 * Words of the body of a page: head and foot bear revision and date, which change with every build.
 */
async function bodyOf(pdf: PDFDocumentProxy, n: number): Promise<string> {
  const page = await pdf.getPage(n)
  const { height } = page.getViewport({ scale: 1 })
  return (await wordsOn(page))
    .filter(({ y }) => y > 60 && y < height - 62)
    .map((w) => w.text)
    .join('')
    .replace(/\s+/g, '')
}

const bodies = async (pdf: PDFDocumentProxy): Promise<readonly string[]> =>
  Promise.all(Array.from({ length: pdf.numPages }, (_, i) => bodyOf(pdf, i + 1)))

async function buildAgain(change: (text: string) => string): Promise<void> {
  const file = path.join(facility, 'facility.yaml')
  await writeFile(file, change(await readFile(file, 'utf8')))
  await buildInto(path.join(root, 'dist'), facility, { quiet: true })
}

beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'revisions-'))
  facility = path.join(root, 'brambleford')
  await cp(demoFolder('brambleford'), facility, { recursive: true })
  await buildAgain((text) => text)
})

afterAll(() => rm(root, { recursive: true, force: true }))

describe('a new revision', () => {
  it('comes with its changed leaves and the list of them, and nothing else', async () => {
    const before = await bodies(await open('binder.pdf'))
    await expect(stat(made('replacement-pages.pdf'))).rejects.toThrow()
    // A line more at the top, and another telephone number: only pages that show the number change.
    await buildAgain((text) =>
      text.replace('revision: 1', '# Second year.\nrevision: 2').replace('555-0145', '555-0199'),
    )
    const binder = await open('binder.pdf')
    const labels = (await binder.getPageLabels()) ?? []
    const now = await bodies(binder)
    expect(now).toHaveLength(before.length)
    const changed = now.flatMap((text, i) => (text === before[i] ? [] : [i]))
    expect(changed.length).toBeGreaterThan(0)
    // Cover and record name the revision itself.
    for (const i of changed)
      expect(
        i === 0 || now[i]?.includes('555-0199') || now[i]?.includes('Recordofrevisions'),
        `page ${labels[i]}`,
      ).toBe(true)
    expect(changed.some((i) => now[i]?.includes('555-0199'))).toBe(true)

    const leaves = [...new Set(changed.map((i) => Math.floor(i / 2)))]
    const wanted = leaves.flatMap((l) => [2 * l, 2 * l + 1]).filter((i) => i < now.length)
    const replacement = await open('replacement-pages.pdf')
    const pages = await bodies(replacement)
    const list = pages[0] ?? ''
    for (const l of leaves)
      expect(list).toContain(
        [labels[2 * l], labels[2 * l + 1]].filter((x) => x !== '' && x !== undefined).join('/'),
      )
    expect(pages.slice(-wanted.length)).toEqual(wanted.map((i) => now[i]))
    expect(pages.length - wanted.length).toBe(2)
    const bytes = await readFile(made('replacement-pages.pdf'))
    expect(brokenRules(openDocument(bytes))).toEqual([])
  })

  it('still offers the same leaves when the same revision is built again', async () => {
    const first = await readFile(made('replacement-pages.pdf'))
    await buildAgain((text) => text)
    expect((await readFile(made('replacement-pages.pdf'))).equals(first)).toBe(true)
  })

  it('exchanges cover and record alone where nothing but the revision has changed', async () => {
    await buildAgain((text) => text.replace('revision: 2', 'revision: 3'))
    const pages = await bodies(await open('replacement-pages.pdf'))
    // The list and its back, and the leaf that has the record on the cover's back.
    expect(pages).toHaveLength(4)
    expect(pages[2]).toContain('Revision3')
    expect(pages.join()).toContain('Recordofrevisions')
  })
})
