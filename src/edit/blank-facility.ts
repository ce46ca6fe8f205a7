import { type EntryAbout, entryAbout, factAt } from '../model/entry-about.ts'
import type { UnitSystem } from '../model/quantity/kinds.ts'
import {
  choicesOf,
  elementOf,
  isOptional,
  shapeOf,
  typeOf,
} from '../validate/schema-advice/schema-keys.ts'
import { schemaLine } from './schema-line.ts'

const head = [
  schemaLine,
  '#',
  '# The facts of one fairground. Fill in the lines that stand empty. A line that begins with # and a',
  '# name says nothing yet: take the # away and write your own value behind the colon. Leave out what',
  '# nobody knows: a usual value stands in, and the manual marks what rests on one.',
]

const capitalized = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

const widest = 96

/** Words in remarks of several lines. */
function remark(text: string): readonly string[] {
  const lines: string[] = []
  let line = '#'
  for (const word of text.split(' ')) {
    if (line.length + word.length + 1 > widest) {
      lines.push(line)
      line = '#'
    }
    line += ` ${word}`
  }
  return [...lines, line]
}

/** What an entry is, how to measure it, and what may stand there. */
function explained(path: readonly string[], schema: unknown, about: EntryAbout): string {
  const range = factAt(path)?.range
  const choices = choicesOf(typeOf(schema) === 'array' ? elementOf(schema) : schema)
  return [
    `${capitalized(about.label)}.`,
    ...(about.howTo === undefined ? [] : [about.howTo]),
    ...(range ? [`From ${range[0]} to ${range[1]}.`] : []),
    ...(choices.length > 0 ? [`One of: ${choices.join(', ')}.`] : []),
  ].join(' ')
}

type Blank = {
  readonly system: UnitSystem
  /** Entries without which there is no manual, by path: they stand open. */
  readonly open: ReadonlySet<string>
}

const isList = (schema: unknown): boolean =>
  typeOf(schema) === 'array' && typeOf(elementOf(schema)) === 'object'

const inBraces = (value: string): string =>
  /[,[\]{}]/.test(value) && !/^["[{]/.test(value) ? `"${value}"` : value

/** One entry of a list on one line, with what it must have and what is mostly said. */
function listed(path: readonly string[], schema: unknown, blank: Blank): string {
  const shape = shapeOf(elementOf(schema))
  const needed = Object.keys(shape).filter((key) => !isOptional(shape[key]))
  const keys = needed.length > 2 ? needed : Object.keys(shape).slice(0, 4)
  const parts = keys.map((key) => {
    const inner = [...path, key]
    return `${key}: ${inBraces(entryAbout(inner, blank.system)?.example ?? 'some text')}`
  })
  return `- { ${parts.join(', ')} }`
}

/** What each entry of a list's groups is. */
function keysOfList(path: readonly string[], schema: unknown, blank: Blank): readonly string[] {
  return Object.entries(shapeOf(elementOf(schema))).flatMap(([key, inner]) => {
    const about = entryAbout([...path, key], blank.system)
    return about ? remark(`- ${key}: ${explained([...path, key], inner, about)}`) : []
  })
}

/** What stands behind the #: of a time zone only its beginning, since a whole one would be believed. */
const exampleFor = (path: readonly string[], { example }: EntryAbout): string =>
  path.at(-1) === 'time-zone' ? (example?.replace(/\/.*$/, '/…') ?? '') : (example ?? 'some text')

/** Lines of one entry: what it is, and itself, behind # where it says nothing yet. */
function entryLines(
  path: readonly string[],
  schema: unknown,
  isOpenAbove: boolean,
  blank: Blank,
): readonly string[] {
  const key = path.at(-1) ?? ''
  const about = entryAbout(path, blank.system)
  // A group that holds nothing yet has nothing to explain.
  const isHollow = typeOf(schema) === 'object' && Object.keys(shapeOf(schema)).length === 0
  if (!about || isHollow) return []
  const isOpen = isOpenAbove && blank.open.has(path.join('.'))
  const indent = '  '.repeat(path.length - 1)
  const line = (text: string): string => `${isOpen ? '' : '#'}${indent}${text}`
  const above = ['', ...remark(explained(path, schema, about))]
  if (typeOf(schema) === 'object')
    return [
      ...above,
      line(`${key}:`),
      ...Object.entries(shapeOf(schema)).flatMap(([name, inner]) =>
        entryLines([...path, name], inner, isOpen, blank),
      ),
    ]
  if (isList(schema))
    return [
      ...above,
      ...keysOfList(path, schema, blank),
      line(`${key}:`),
      line(`  ${listed(path, schema, blank)}`),
    ]
  return [...above, line(isOpen ? `${key}:` : `${key}: ${exampleFor(path, about)}`)]
}

/** Entries without which there is no manual; of the oval two dimensions. */
const needed = [
  'id',
  'name',
  'place',
  'place.town',
  'units',
  'paper',
  'oval',
  'oval.lap',
  'oval.straight',
  'cushion',
  'cushion.material',
]

/**
 * A facility file that says nothing yet: every entry that there may be, with what it is, how to
 * measure it, and an example behind a #; those that must be filled in stand empty.
 */
export function blankFacility(schema: unknown, system: UnitSystem): string {
  const blank = { system, open: new Set(needed) }
  const lines = Object.entries(shapeOf(schema)).flatMap(([key, inner]) =>
    entryLines([key], inner, true, blank),
  )
  return `${[...head, ...lines].join('\n')}\n`
}
