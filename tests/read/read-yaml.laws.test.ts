import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { readYaml } from '../../src/read/read-yaml.ts'

/** A document as somebody writes one: groups and lists in each other, texts, numbers, lists in brackets. */
type Node =
  | { readonly kind: 'text'; readonly written: string }
  | { readonly kind: 'brackets'; readonly items: readonly string[] }
  | { readonly kind: 'list'; readonly items: readonly Node[] }
  | { readonly kind: 'group'; readonly entries: readonly (readonly [string, Node])[] }

const name = fc.stringMatching(/^[a-z][a-z]{1,7}(-[a-z]{2,5})?$/)
const word = fc.stringMatching(/^[A-Za-z][a-z]{1,7}( [a-z]{2,7}){0,3}$/)
const text = fc.oneof(
  word,
  word.map((w) => `"${w}"`),
  word.map((w) => `'${w}'`),
  word.map((w) => `"${w}: so"`),
  fc.integer({ min: -9999, max: 9999 }).map(String),
  fc.constantFrom('true', 'false', '12.5', '60 ft', '2027-08-03'),
)
const leaf: fc.Arbitrary<Node> = fc.oneof(
  { weight: 4, arbitrary: text.map((written) => ({ kind: 'text' as const, written })) },
  {
    weight: 1,
    arbitrary: fc
      .array(text, { minLength: 1, maxLength: 4 })
      .map((items) => ({ kind: 'brackets' as const, items })),
  },
)

const { document } = fc.letrec<{ node: Node; document: Node }>((tie) => {
  const entries = fc.uniqueArray(fc.tuple(name, tie('node')), {
    minLength: 2,
    maxLength: 4,
    selector: ([key]) => key,
  })
  const group = entries.map((all) => ({ kind: 'group' as const, entries: all }))
  const list = fc
    .array(tie('node'), { minLength: 1, maxLength: 4 })
    .map((items) => ({ kind: 'list' as const, items }))
  return {
    node: fc.oneof({ maxDepth: 4, depthSize: 'medium' }, leaf, group, list),
    document: group,
  }
})

/** The lines of a node below an indent; a group in a list begins behind its dash. */
function linesOf(node: Node, indent = ''): readonly string[] {
  if (node.kind === 'text') return [indent + node.written]
  if (node.kind === 'brackets') return [`${indent}[${node.items.join(', ')}]`]
  if (node.kind === 'list')
    return node.items.flatMap((item) => {
      const [first = '', ...rest] = linesOf(item, `${indent}  `)
      return [`${indent}- ${first.trimStart()}`, ...rest]
    })
  return node.entries.flatMap(([key, value]) =>
    value.kind === 'text' || value.kind === 'brackets'
      ? [`${indent}${key}: ${linesOf(value)[0]}`]
      : [`${indent}${key}:`, ...linesOf(value, `${indent}  `)],
  )
}

const written = document.map((node) => linesOf(node))
const textOf = (lines: readonly string[]): string => `${lines.join('\n')}\n`
const read = (lines: readonly string[]) => readYaml({ path: 'a.yaml', text: textOf(lines) })

/** How far in a line begins: what begins behind a dash stands further in. */
const indentOf = (line: string): number => line.search(/[^ -]/)

/** What can be wrong with a line, and how it is then; undefined where that cannot be wrong with it. */
const slips: Readonly<Record<string, (line: string, before: string) => string | undefined>> = {
  'a space too many': (line) => (/^\s*[a-z-]+: ./.test(line) ? ` ${line}` : undefined),
  // Where it is the first of its group, the next one could as well have a space too many.
  'a space too few': (line, before) =>
    line.startsWith('  ') && indentOf(before) >= line.search(/\S/) ? line.slice(1) : undefined,
  'no space behind the colon': (line) =>
    /^\s*[a-z-]+: [A-Za-z\d]/.test(line) ? line.replace(': ', ':') : undefined,
  'a tab': (line) => (line.startsWith('  ') ? `\t${line.trimStart()}` : undefined),
  'a quote that is not closed': (line) => (/["']$/.test(line) ? line.slice(0, -1) : undefined),
  'a bracket that is not closed': (line) => (line.endsWith(']') ? line.slice(0, -1) : undefined),
}

describe('YAML of any shape', () => {
  it('is read as the library reads it', () => {
    fc.assert(
      fc.property(written, (lines) => {
        const { value, problems } = read(lines)
        expect(problems).toEqual([])
        expect(value?.data).toEqual(parse(textOf(lines)))
      }),
    )
  })

  it.each(Object.entries(slips))('with %s is told once, in its line', (_, slip) => {
    let told = 0
    fc.assert(
      fc.property(written, fc.nat(), (lines, seed) => {
        const all = lines.flatMap((line, at) => {
          const changed = slip(line, lines[at - 1] ?? '')
          return changed === undefined ? [] : [{ at, changed }]
        })
        const one = all[seed % all.length]
        if (!one) return
        const { value, problems } = read(lines.with(one.at, one.changed))
        if (value && JSON.stringify(value.data) === JSON.stringify(parse(textOf(lines)))) return
        told++
        expect(problems.map((p) => p.place.line)).toEqual([one.at + 1])
      }),
      { numRuns: 150 },
    )
    expect(told).toBeGreaterThan(20)
  })
})
