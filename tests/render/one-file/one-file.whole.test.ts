import { createHash } from 'node:crypto'
import { beforeAll, describe, expect, it } from 'vitest'
import { loadMakings } from '../../../src/cli/site-files.ts'
import { oneFileOf } from '../../../src/render/site/site-files.ts'
import { demoManual, demos, folders } from '../../support/demo.ts'

const files = new Map<string, string>()

beforeAll(async () => {
  for (const id of demos) {
    const { manual, words } = await demoManual(id)
    files.set(id, String((await oneFileOf(manual, words, await loadMakings(folders))).data))
  }
})

const hash = (text: string): string => createHash('sha256').update(text).digest('base64')

describe.each(demos)('the manual of %s in one file', (id) => {
  const text = (): string => files.get(id) ?? ''
  const shown = (): string => text().replace(/<(script|style)\b[^>]*>.*?<\/\1>/gs, '')

  it('can be sent: less than 3 MB', () => {
    expect(Buffer.byteLength(text())).toBeLessThan(3_000_000)
  })

  it('has every page, no id twice, and only links that lead to one', async () => {
    const { manual } = await demoManual(id)
    const all = [...shown().matchAll(/\sid="([^"]+)"/g)].map(([, found = '']) => found)
    const ids = new Set(all)
    expect(all.length).toBe(ids.size)
    for (const p of manual.procedures) expect(ids.has(`procedures.${p.id}`)).toBe(true)
    for (const w of manual.worksheets) expect(ids.has(`worksheets.${w.id}`)).toBe(true)
    for (const [, href = ''] of shown().matchAll(/\shref="([^"]*)"/g))
      if (!/^(tel|geo|maps|data):/.test(href)) {
        expect(href).toMatch(/^#/)
        expect(ids.has(href.slice(1)), href).toBe(true)
      }
  })

  it('leads from its search to pages that it has', () => {
    const index = /id="manual-index">(.*?)<\/script>/s.exec(text())?.[1] ?? '{}'
    const { entries } = JSON.parse(index) as { entries: readonly (readonly [string])[] }
    expect(entries.length).toBeGreaterThan(200)
    const ids = new Set([...shown().matchAll(/\sid="([^"]+)"/g)].map(([, found]) => found))
    for (const [href] of entries) expect(ids.has(href.slice(1)), href).toBe(true)
  })

  it('has each drawing once', () => {
    const insides = [...shown().matchAll(/<svg[^>]*>(.*?)<\/svg>/gs)]
      .map(([, inside = '']) => inside)
      .filter((inside) => inside.length > 100)
    expect(new Set(insides).size).toBe(insides.length)
  })

  it('asks for nothing, and lets its own style and scripts be used alone', () => {
    expect(shown()).not.toMatch(/https?:\/\/(?!www\.w3\.org)|\ssrc=|\sstyle=|\son[a-z]+="/)
    const policy = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(text())?.[1] ?? ''
    expect(policy).toContain("default-src 'none'")
    expect(policy).not.toContain('unsafe')
    const own = [...text().matchAll(/<(?:script|style)>(.*?)<\/(?:script|style)>/gs)]
    expect(own).toHaveLength(2)
    for (const [, inside = ''] of own) expect(policy).toContain(`'sha256-${hash(inside)}'`)
  })
})
