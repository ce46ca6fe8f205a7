import path from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { beyondLatin, type Face, faces } from '../../../src/cli/load/faces.ts'
import { loadFonts } from '../../../src/cli/load/load-fonts.ts'
import { renderBinder } from '../../../src/render/binder/render-binder.ts'
import { renderDividers } from '../../../src/render/binder/render-dividers.ts'
import { renderCards } from '../../../src/render/cards/render-cards.ts'
import { renderForms } from '../../../src/render/forms/render-forms.ts'
import { renderSheets } from '../../../src/render/sheets/render-sheets.ts'
import { renderSite } from '../../../src/render/site/render-site.ts'
import { assetsFor, demoManual, demos } from '../../support/demo.ts'
import { fontCharacters } from '../../support/font-characters.ts'

const characters = new Map<Face, ReadonlySet<number>>()

beforeAll(async () => {
  const { files } = await loadFonts()
  for (const face of faces) {
    const file = files.find((f) => f.path === `fonts/${path.posix.basename(face.file)}`)
    if (!file) throw new Error(`${face.file} is not loaded`)
    characters.set(face, fontCharacters(file.data))
  }
})

const ranges = beyondLatin
  .split(',')
  .map((r) => (r.slice(2).split('-') as [string, string?]).map((n) => Number.parseInt(n ?? '', 16)))

const isBeyondLatin = (code: number): boolean =>
  ranges.some(([from = 0, to = from]) => code >= from && code <= to)

/** Faces of a family that stand in for each other: of one weight and style. */
function stylesOf(family: string): readonly (readonly Face[])[] {
  const own = faces.filter((f) => f.family === family)
  const styles = new Set(own.map((f) => `${f.weight} ${f.style}`))
  return [...styles].map((style) => own.filter((f) => `${f.weight} ${f.style}` === style))
}

/** Everything that a reader of a manual is shown, with the style sheets. */
async function everythingOf(id: (typeof demos)[number]): Promise<string> {
  const { manual, words } = await demoManual(id)
  const assets = await assetsFor(words, 'linked')
  const sheets = renderSheets(manual, assets)
  return [
    ...renderSite(manual, assets).map((f) => f.data),
    ...renderBinder(manual, assets).parts.flatMap((p) => [p.body, p.css.left, p.css.right]),
    ...[renderForms, renderCards, renderDividers]
      .map((render) => render(manual, assets))
      .flatMap((copy) => [copy.body, copy.css]),
    ...sheets.papers.map((p) => p.css),
    ...sheets.sheets
      .map((sheet) => sheet())
      .flatMap((s) => [...s.pages, ...s.drawings.map((d) => d.body)]),
  ].join('\n')
}

/** Characters that show something, but for those that only format. */
const shown = (text: string): readonly string[] => [
  ...new Set(text.replace(/[\p{Cc}\p{Cf}]/gu, '')),
]

/** Those that none of some faces has. */
const missing = (text: string, from: readonly Face[]): readonly string[] =>
  shown(text).filter((c) => !from.some((f) => characters.get(f)?.has(c.codePointAt(0) ?? 0)))

const math = /<math[\s\S]*?<\/math>/g

describe('the fonts', () => {
  it.each(demos)('have every character of every page of %s, in every weight', async (id) => {
    const all = await everythingOf(id)
    expect(all).toMatch(/■/)
    const text = all.replace(math, '')
    for (const family of ['Source Sans 3', 'Barlow Condensed'])
      for (const style of stylesOf(family)) expect(missing(text, style), family).toEqual([])
    const formulas = (all.match(math) ?? []).join('')
    for (const style of stylesOf('STIX Two Math')) expect(missing(formulas, style)).toEqual([])
  })

  it('of the whole files are taken only for what the Latin ones have not', () => {
    for (const face of faces) {
      if (face.range !== undefined || face.family === 'STIX Two Math') continue
      expect([...(characters.get(face) ?? [])].filter(isBeyondLatin), face.file).toEqual([])
    }
  })

  it('have the signs and letters that other facilities and languages may need', () => {
    const wanted = '→←↑↓■□●○✓☐≤≥≈≠√∞½⅓⅛²³⁴₂αβγδθλμπρσφωΔΣąćęłńśźżčďěňřšťůžőűğışțțâîãõøåæœß€£'
    for (const family of ['Source Sans 3', 'Barlow Condensed'])
      for (const style of stylesOf(family)) expect(missing(wanted, style), family).toEqual([])
  })
})
