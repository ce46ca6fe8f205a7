import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { type Node, parse } from 'acorn'
import { transformSync } from 'esbuild'
import { analyse } from 'scslre'
import { describe, expect, it, vi } from 'vitest'
import { projectFolders } from '../../src/cli/folders.ts'

type Pattern = { readonly where: string; readonly source: string; readonly flags: string }

/** Every pattern that is written in a text of TypeScript. */
function patternsIn(where: string, text: string): readonly Pattern[] {
  const found: Pattern[] = []
  const look = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return
    const { type, regex } = node as Node & { regex?: { pattern: string; flags: string } }
    if (type === 'Literal' && regex)
      found.push({ where, source: regex.pattern, flags: regex.flags })
    for (const inner of Object.values(node)) look(inner)
  }
  const { code } = transformSync(text, { loader: 'ts' })
  look(parse(code, { ecmaVersion: 'latest', sourceType: 'module' }))
  return found
}

/** Patterns that can take twice as long for one more character. */
const exponential = (patterns: readonly Pattern[]): readonly string[] =>
  patterns
    .filter(({ source, flags }) =>
      analyse({ source, flags }).reports.some((report) => report.exponential),
    )
    .map(({ where, source, flags }) => `${where} /${source}/${flags}`)

const src = path.join(projectFolders().project, 'src')
const sources = readdirSync(src, { recursive: true, encoding: 'utf8' }).filter(
  (file) => file.endsWith('.ts') && !file.endsWith('.d.ts'),
)

describe('patterns', () => {
  it('of the sources take exponential time for no text', () => {
    const all = sources.flatMap((file) =>
      patternsIn(file, readFileSync(path.join(src, file), 'utf8')),
    )
    expect(all.length).toBeGreaterThan(400)
    expect(exponential(all)).toEqual([])
  })

  it('that do are found', () =>
    expect(exponential(patternsIn('own.ts', 'const odd: RegExp = /^(?:a+)+$/u'))).toEqual([
      'own.ts /^(?:a+)+$/u',
    ]))

  it('that are put together of others take it neither', async () => {
    const made: Pattern[] = []
    const plain = RegExp
    vi.resetModules()
    vi.stubGlobal(
      'RegExp',
      new Proxy(plain, {
        construct: (target, given: [string, string?]) => {
          const pattern = new target(...given)
          made.push({ where: 'put together', source: pattern.source, flags: pattern.flags })
          return pattern
        },
      }),
    )
    try {
      const parts = [
        await import('../../src/model/quantity/read-quantity.ts'),
        await import('../../src/model/quantity/slips.ts'),
        await import('../../src/validate/typed-quantity.ts'),
        await import('../../src/validate/schemas/index-terms.ts'),
        await import('../../src/render/one-file/shorter.ts'),
      ]
      expect(made.length).toBeGreaterThanOrEqual(parts.length)
      expect(exponential(made)).toEqual([])
    } finally {
      vi.unstubAllGlobals()
      vi.resetModules()
    }
  })
})
