import { isScalar, isSeq, type Node, parseDocument, visit } from 'yaml'
import units from '../../../shared/units.json' with { type: 'json' }
import type { Chance } from '../chance.ts'
import { hostileTexts, oddDays, oddNumbers } from './hostile.ts'
import { type Mutations, ofText } from './mutation.ts'

/** A stretch of a text, with what is written there. */
type Stretch = { readonly from: number; readonly to: number; readonly text: string }

/** Where the values, the entries and the items of a YAML or JSON text stand. */
type Entries = {
  readonly scalars: readonly Stretch[]
  /** Values of any kind. */
  readonly values: readonly Stretch[]
  readonly keys: readonly Stretch[]
  /** Items of each list. */
  readonly lists: readonly (readonly Stretch[])[]
}

let last: { readonly text: string; readonly entries: Entries } | undefined

function entriesOf(text: string): Entries {
  // Many mutations of one text follow each other.
  if (last?.text === text) return last.entries
  const scalars: Stretch[] = []
  const values: Stretch[] = []
  const keys: Stretch[] = []
  const lists: Stretch[][] = []
  const stretchOf = (node: unknown): Stretch | undefined => {
    const range = (node as Node | null)?.range
    return range
      ? { from: range[0], to: range[1], text: text.slice(range[0], range[1]) }
      : undefined
  }
  visit(parseDocument(text, { uniqueKeys: false, prettyErrors: false }), {
    Node: (key, node) => {
      const at = stretchOf(node)
      if (!at) return
      if (key === 'key') keys.push(at)
      else {
        values.push(at)
        if (isScalar(node)) scalars.push(at)
      }
      if (isSeq(node)) lists.push(node.items.flatMap((item) => stretchOf(item) ?? []))
    },
  })
  last = { text, entries: { scalars, values, keys, lists } }
  return last.entries
}

const put = (text: string, { from, to }: Stretch, instead: string): string =>
  text.slice(0, from) + instead + text.slice(to)

/** A text as a value that YAML and JSON read alike. */
const quoted = (text: string): string => JSON.stringify(text)

/** The words of a scalar without its quotes. */
const bare = ({ text }: Stretch): string => text.replace(/^(["'])([\s\S]*)\1$/, '$2')

const isQuoted = ({ text }: Stretch): boolean => /^["']/.test(text)

const written = (stretch: Stretch, text: string): string =>
  isQuoted(stretch) || /[:#{}[\],&*!|>'"%@`]/.test(text) ? quoted(text) : text

/** A change of one value. */
const ofValue = (
  kind: 'scalars' | 'values' | 'keys',
  isMeant: (value: Stretch) => boolean,
  other: (value: Stretch, entries: Entries, chance: Chance) => string,
) =>
  ofText((text, chance) => {
    const entries = entriesOf(text)
    const meant = entries[kind].filter(isMeant)
    if (meant.length === 0) return text
    const value = chance.oneOf(meant)
    return put(text, value, other(value, entries, chance))
  })

const factors = [0, -1, 0.1, 0.5, 0.9, 0.99, 1.01, 1.1, 2, 3, 10, 1000, 1e6, 1e-6] as const

const any = (): boolean => true
const number = /\d[\d,]*(?:\.\d+)?(?: \d+\/\d+)?/
const unitNames = units.units.map(({ id }) => id)
const day = /\d{4}-\d{2}-\d{2}|^["']?\d{1,2}:\d{2}/

/** The number in a text, so many times as large. */
const times = (text: string, factor: number): string =>
  text.replace(number, (n) => {
    const [whole = '', , top, bottom] = /^([\d,.]+)( (\d+)\/(\d+))?$/.exec(n) ?? []
    const value = Number(whole.replaceAll(',', '')) + (top ? Number(top) / Number(bottom) : 0)
    return Number.isFinite(value) ? String(Number((value * factor).toPrecision(6))) : n
  })

const kinds = [
  '[]',
  '{}',
  'null',
  'true',
  'false',
  '17',
  '-3.5',
  '""',
  '"zq"',
  '[[[]]]',
  '{zq: {}}',
  '[1, 2, 3]',
  '[null]',
  '{"": 1}',
  '2027-06-14',
  '.nan',
  '.inf',
  '12e999',
]

const strangeKeys = [
  '__proto__',
  'constructor',
  'toString',
  'prototype',
  '""',
  'null',
  '? zq',
  '17',
  '"<zq-key>"',
  '"a.b"',
  'zq',
]

const isNumeric = (value: Stretch): boolean => number.test(value.text)

/** Values of another size, unit or day: most of them can be true. */
const quantityMutations: Mutations = [
  ofValue('scalars', isNumeric, (value, _, chance) =>
    written(value, times(bare(value), chance.oneOf(factors))),
  ),
  ofValue('scalars', isNumeric, (value, _, chance) =>
    written(value, times(bare(value), 0.5 + chance.below(1000) / 1000)),
  ),
  ofValue('scalars', isNumeric, (value, _, chance) =>
    written(
      value,
      bare(value).replace(number, () => chance.oneOf(oddNumbers)),
    ),
  ),
  ofValue('scalars', isNumeric, (value, _, chance) =>
    written(
      value,
      bare(value).replace(
        /(\d\s*)\D*$/,
        (_all, n: string) => `${n.trim()} ${chance.oneOf(unitNames)}`,
      ),
    ),
  ),
  ofValue(
    'scalars',
    (value) => day.test(value.text),
    (_, __, chance) => quoted(chance.oneOf(oddDays)),
  ),
]

/** Entries that stand elsewhere, are missing, or say another thing. */
const entryMutations: Mutations = [
  // What another entry says.
  ofValue('scalars', any, (_, { scalars }, chance) => chance.oneOf(scalars).text),
  ofValue('values', any, (_, { values }, chance) => chance.oneOf(values).text),
  // A value of another kind.
  ofValue('values', any, (_, __, chance) => chance.oneOf(kinds)),
  // Nothing.
  ofValue('values', any, () => ''),
  // Words of somebody who means harm, alone or behind those that stand there.
  ofValue('scalars', any, (_, __, chance) => quoted(chance.oneOf(hostileTexts))),
  ofValue('scalars', any, (value, _, chance) =>
    quoted(`${bare(value)} ${chance.oneOf(hostileTexts)}`),
  ),
  ofValue(
    'scalars',
    (value) => !isNumeric(value),
    (value, _, chance) => quoted(`${bare(value)}${chance.oneOf(hostileTexts)}`),
  ),
  // Another name, or that of another entry.
  ofValue('keys', any, (_, { keys }, chance) =>
    chance.happens(0.5) ? chance.oneOf(keys).text : chance.oneOf(strangeKeys),
  ),
  // An item stands twice.
  ofText((text, chance) => {
    const lists = entriesOf(text).lists.filter((items) => items.length > 0)
    if (lists.length === 0) return text
    const item = chance.oneOf(chance.oneOf(lists))
    const line = text.lastIndexOf('\n', item.from - 1) + 1
    const isBlock = /^\s*- $/.test(text.slice(line, item.from))
    return put(
      text,
      { ...item, from: item.to },
      isBlock ? `\n${text.slice(line, item.to).trimEnd()}\n` : `, ${item.text}`,
    )
  }),
  // Two items have changed places.
  ofText((text, chance) => {
    const lists = entriesOf(text).lists.filter((items) => items.length > 1)
    if (lists.length === 0) return text
    const items = chance.oneOf(lists)
    const i = chance.below(items.length - 1)
    const [a, b] = [items[i], items[i + 1]]
    return a && b ? put(put(text, b, a.text), a, b.text) : text
  }),
  // An entry more, in a map between braces.
  ofValue(
    'values',
    ({ text }) => text.startsWith('{'),
    ({ text }, _, chance) => text.replace('{', `{ ${chance.oneOf(strangeKeys)}: 1, `),
  ),
]

/** Changes of what the entries of a YAML or JSON file say. */
export const quantitiesOfEntries = quantityMutations
export const meaningsOfEntries = entryMutations
