import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { splice } from '../../src/edit/splice.ts'
import type { Value } from '../../src/edit/written.ts'
import { entryAbout } from '../../src/model/entry-about.ts'
import type { Path } from '../../src/read/read-yaml.ts'
import { groupsOf } from '../../src/validate/schema-advice/schema-keys.ts'
import { facility } from '../../src/validate/schemas/facility.ts'
import { demoFolder, demos } from './demo.ts'

/** Every way in which a file's lines may end. */
const endings: readonly (readonly [string, (text: string) => string])[] = [
  ['line feeds', (t) => t],
  ['carriage returns and line feeds', (t) => t.replaceAll('\n', '\r\n')],
  ['a byte order mark', (t) => `\uFEFF${t}`],
  ['no end of the last line', (t) => t.replace(/\n+$/, '')],
]

const files = demos.flatMap((demo) =>
  endings.map(
    ([name, end]) =>
      [
        `${demo} with ${name}`,
        end(readFileSync(path.join(demoFolder(demo), 'facility.yaml'), 'utf8')),
      ] as const,
  ),
)

type Entry = { readonly at: Path; readonly value: unknown }

const entriesOf = (data: unknown, at: Path = []): readonly Entry[] =>
  typeof data === 'object' && data !== null
    ? Object.entries(data).flatMap(([key, value]) => {
        const inner = [...at, Array.isArray(data) ? Number(key) : key]
        return [{ at: inner, value }, ...entriesOf(value, inner)]
      })
    : []

/** Data with an entry set, or removed with the groups that this leaves empty. */
function meant(data: unknown, at: Path, value: unknown): unknown {
  const copy = structuredClone(data) as Record<string | number, unknown>
  const groups = [copy]
  for (const step of at.slice(0, -1)) {
    const last = groups.at(-1) ?? copy
    last[step] ??= {}
    groups.push(last[step] as Record<string | number, unknown>)
  }
  const [last, group] = [at.at(-1) ?? '', groups.at(-1) ?? copy]
  if (value !== undefined) {
    group[last] = value
    return copy
  }
  for (let i = at.length - 1; i >= 0; i--) {
    const [from, step] = [groups[i] ?? copy, at[i] ?? '']
    if (Array.isArray(from)) from.splice(Number(step), 1)
    else delete from[step]
    if (Object.keys(from).length > 0) break
  }
  return copy
}

/** The lines that differ: how many of the old ones were exchanged for how many new ones. */
function difference(before: string, after: string) {
  const [a, b] = [before.split('\n'), after.split('\n')]
  let head = 0
  while (head < a.length && head < b.length && a[head] === b[head]) head++
  let tail = 0
  while (tail < a.length - head && tail < b.length - head && a.at(-1 - tail) === b.at(-1 - tail))
    tail++
  return { old: a.length - head - tail, now: b.length - head - tail, line: head }
}

const other = (value: unknown): Value =>
  typeof value === 'number' ? value + 1 : typeof value === 'boolean' ? !value : `${value}: new, #1`

/** A text with an entry changed, added or removed. */
export function spliced(text: string, at: Path, value: Value | undefined): string {
  const made = splice(text, { path: at, value })
  if (!made.ok) throw new Error(`${at.join('.')}: ${made.why}`)
  return made.text
}

/**
 * Declares the tests of every change of every demo.
 * @param sample One change of so many is made.
 */
export const describeSplices = (sample: number): void =>
  describe.each(files)('%s', (_, text) => {
    const some = <T>(list: readonly T[]): readonly T[] =>
      list.filter((_entry, i) => i % sample === 0)

    const data: unknown = parse(text)
    const entries = entriesOf(data)
    const leaves = entries.filter(({ value }) => typeof value !== 'object')

    it('has every value changed in its own line alone', () => {
      for (const { at, value } of some(leaves)) {
        const made = spliced(text, at, other(value))
        expect(parse(made)).toEqual(meant(data, at, other(value)))
        expect({ at, ...difference(text, made) }).toMatchObject({ at, old: 1, now: 1 })
      }
    })

    it('has every entry removed by its own lines alone, remarks of others kept', () => {
      for (const { at } of some(entries)) {
        const made = spliced(text, at, undefined)
        expect(parse(made) ?? {}).toEqual(meant(data, at, undefined))
        // What is left stands in the file as before: one stretch is gone and nothing else.
        let head = 0
        while (head < made.length && text[head] === made[head]) head++
        const gone = text.length - made.length
        const stretch = Array.from({ length: head + 1 }, (_x, i) => head - i).find(
          (from) => text.slice(0, from) + text.slice(from + gone) === made,
        )
        expect(stretch, at.join('.')).not.toBeUndefined()
      }
    })

    it('has every entry that may stand there added, in one line or the lines of its new group', () => {
      const missing = groupsOf(facility)
        .filter((g) => !g.listed)
        .flatMap((g) => g.keys.map((key) => [...g.path, key]))
        .filter((at) => !entries.some((e) => e.at.join('.') === at.join('.')))
      expect(missing.length).toBeGreaterThan(50)
      for (const at of some(missing)) {
        const value = entryAbout(at)?.example ?? 'some text'
        const made = spliced(text, at, value)
        expect(parse(made)).toEqual(meant(data, at, value))
        const { old, now } = difference(text, made)
        expect(old).toBeLessThanOrEqual(1)
        expect(now - old).toBeLessThanOrEqual(at.length)
      }
    })

    it('has every list made longer by one line, or one value', () => {
      for (const { at, value } of some(entries.filter((e) => Array.isArray(e.value)))) {
        const list = value as readonly unknown[]
        const made = spliced(text, [...at, list.length], { of: 'a, b', note: 'new' })
        expect(parse(made)).toEqual(meant(data, [...at, list.length], { of: 'a, b', note: 'new' }))
        const { old, now } = difference(text, made)
        expect(now + old).toBeLessThanOrEqual(3)
      }
    })
  })
