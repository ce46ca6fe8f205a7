import { entryAbout, factAt } from '../../src/model/entry-about.ts'
import {
  choicesOf,
  elementOf,
  isOptional,
  shapeOf,
  typeOf,
} from '../../src/validate/schema-advice/schema-keys.ts'

const head = `# Every entry of facility.yaml

This page is made from the program itself (\`npm run guide\`); do not edit it. Only entries marked **needed** must be
there; those marked *needed there* must be where their group or list is. What you leave out gets the usual value shown, and the
manual marks what rests on it.
Indent each step of a name by two spaces: \`oval.width.turns\` is \`turns:\` below \`width:\` below \`oval:\`.
Entries of lists are written once for each: a machine, a race day, a person.
`

type Row = {
  readonly path: readonly string[]
  readonly schema: unknown
  /** Without it there is no manual, or nothing where it stands. */
  readonly need: '' | ' **needed**' | ' *needed there*'
}

const isList = (schema: unknown): boolean => typeOf(schema) === 'array'

/** What an entry's value is made of: the group itself, or each group of a list. */
const insideOf = (schema: unknown): Readonly<Record<string, unknown>> =>
  shapeOf(isList(schema) ? elementOf(schema) : schema)

/** An entry and all below it, in the order of the schema. */
function rowsUnder(path: readonly string[], schema: unknown, isAboveNeeded = true): readonly Row[] {
  const inner = Object.entries(insideOf(schema))
  const isNeeded = isAboveNeeded && !isOptional(schema)
  const need = isNeeded ? ' **needed**' : isOptional(schema) ? '' : ' *needed there*'
  return [
    { path, schema, need },
    ...inner.flatMap(([key, below]) => rowsUnder([...path, key], below, isNeeded)),
  ]
}

/** Text inside a cell of a table. */
const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ')

const code = (text: string): string => (text === '' ? '' : `\`${cell(text)}\``)

function usualOf(path: readonly string[]): string {
  const spec = factAt(path)
  if (!spec) return ''
  const usual = spec.typical('stone-dust')
  return usual ? [...new Set([usual.us, usual.metric])].join(', ') : ''
}

function about({ path, schema }: Row): string {
  const words = entryAbout(path)
  const range = factAt(path)?.range
  const choices = choicesOf(isList(schema) ? elementOf(schema) : schema)
  const parts = [
    words ? `**${words.label}**.` : '',
    words?.howTo ?? '',
    range ? `From ${range[0]} to ${range[1]}.` : '',
    choices.length > 0 ? `One of ${choices.map((c) => `\`${c}\``).join(', ')}.` : '',
  ]
  return cell(parts.filter((part) => part !== '').join(' '))
}

function line(row: Row): string {
  const isGroup = Object.keys(insideOf(row.schema)).length > 0
  const example = isGroup ? '' : (entryAbout(row.path)?.example ?? '')
  return `| \`${row.path.join('.')}\`${row.need} | ${about(row)} | ${code(example)} | ${cell(usualOf(row.path))} |`
}

/** A heading as the reader calls the entry. */
function heading(key: string): string {
  const label = entryAbout([key])?.label ?? key
  return `## ${label.charAt(0).toUpperCase()}${label.slice(1)}`
}

const table = (rows: readonly Row[]): string =>
  [
    '| entry | what it is, how to find it | example | usual |',
    '|---|---|---|---|',
    ...rows.map(line),
  ].join('\n')

/**
 * The page of all entries of the facility file, as Markdown: first those that stand alone, then
 * each group.
 */
export function entriesPage(schema: unknown): string {
  const entries = Object.entries(shapeOf(schema))
  const isGroup = ([, inner]: readonly [string, unknown]): boolean =>
    Object.keys(insideOf(inner)).length > 0
  const single = entries.filter((e) => !isGroup(e)).flatMap(([key, s]) => rowsUnder([key], s))
  const groups = entries
    .filter(isGroup)
    .map(([key, inner]) => `${heading(key)}\n\n${table(rowsUnder([key], inner))}\n`)
  return `${[head, `## The fair\n\n${table(single)}\n`, ...groups].join('\n')}`
}
