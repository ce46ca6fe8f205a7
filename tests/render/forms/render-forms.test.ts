import { describe, expect, it } from 'vitest'
import { renderForms } from '../../../src/render/forms/render-forms.ts'
import { assetsFor } from '../../support/demo.ts'
import { bareFacility, manualOf, smallManual } from '../../support/small.ts'

type Field = { readonly name: string; readonly tip: string; readonly kind: string }

const sectionsOf = (text: string): readonly string[] => text.split('<section class="form').slice(1)

const fieldsOf = (text: string): readonly Field[] =>
  [...text.matchAll(/data-field="([^"]*)" data-tip="([^"]*)" data-kind="([^"]*)"/g)].map((m) => ({
    name: m[1] ?? '',
    tip: m[2] ?? '',
    kind: m[3] ?? '',
  }))

describe('forms', () => {
  it('give every place to write a name of its own, a tooltip, and a kind', async () => {
    const { manual, words } = await smallManual()
    const text = renderForms(manual, await assetsFor(words, 'linked')).body
    const fields = fieldsOf(text)
    expect(fields).toHaveLength([...text.matchAll(/data-field=/g)].length)
    expect(new Set(fields.map((f) => f.name)).size).toBe(fields.length)
    for (const f of fields) {
      expect(f.name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*\.[a-z0-9.-]*[a-z0-9]$/)
      expect(f.tip, f.name).toMatch(/: ./)
      expect(['text', 'check'], f.name).toContain(f.kind)
    }
    expect(fields.some((f) => f.kind === 'check')).toBe(true)
  })

  it('say who fills each in, when, and where it is kept, and end with a signature', async () => {
    const { manual, words } = await smallManual()
    const sections = sectionsOf(renderForms(manual, await assetsFor(words, 'linked')).body)
    for (const f of manual.forms) {
      const own = sections.filter((s) => new RegExp(`id="form-${f.id}(?:-\\d+)?"`).test(s))
      expect(own.length, f.id).toBeGreaterThan(0)
      for (const s of own)
        for (const said of [f.who, f.moment])
          expect(s, f.id).toContain(said.replaceAll("'", '&#39;'))
      expect(own.at(-1), f.id).toContain('class="sign"')
    }
  })
})

describe('a depth grid of many stations', () => {
  it('goes on over as many pages as it needs, with its head on each', async () => {
    const { manual, words } = await manualOf(
      `${bareFacility}practice: { survey: { stations: "60", lines: "4" } }\n`,
    )
    const grid = manual.forms.find((f) => f.id === 'daily-log')
    const pages = sectionsOf(renderForms(manual, await assetsFor(words, 'linked')).body).filter(
      (s) => s.includes('id="form-daily-log'),
    )
    expect(pages.length).toBeGreaterThan(2)
    const heads = pages.flatMap((s) =>
      [...s.matchAll(/<th scope="row">([^<]*)/g)].map((m) =>
        (m[1] ?? '').replace(/<[^>]*>/g, '').replaceAll('\u00a0', ' '),
      ),
    )
    expect(heads).toEqual(grid?.table?.rows.map((r) => r.head))
    for (const s of pages) expect([...s.matchAll(/<th scope="col"/g)]).toHaveLength(6)
    expect(pages.filter((s) => s.includes('class="sign"'))).toHaveLength(1)
  })
})
