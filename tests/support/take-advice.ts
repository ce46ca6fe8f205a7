import type { Problem } from '../../src/model/problem.ts'

/** What a message offers to be typed, and how. */
type Advice =
  /** In the place of what is marked, or of the entry that it names. */
  | { readonly type: string }
  | { readonly indent: number }
  /** Lines before which a # is taken away. */
  | { readonly uncomment: readonly number[] }
  /** What stands behind this gets a comma. */
  | { readonly comma: string }

/** What a hint says behind these words is to be copied, up to a semicolon. */
const lead =
  /(?:^|[;,] (?:or, )?(?:where [^,;]*, )?)(?:write (?:(?:one value, such as|what it holds:|it with its unit:|it in digits:|its number:|digits alone:|year, month, day:) )?|put (?:it|the text) in quotes: |leave them out, or type straight ones: |(?:if it belongs to the text, )(?:write |put the text in quotes: )|put ["'] at the end of the text: |did you mean (?="))/g

/** Advice that says in words what to write, and holds nothing to be copied. */
const inWords =
  /^(?:behind|the |what |that |one |digits alone|some |your |a (?:line|number)|true or|it as in|all numbers|\d+ with its unit|degrees )/

const aText = /^(?:[\w-]+: )?(?:"(?:[^"\\]|\\.)*"|'(?:[^']|'')*')(?=$|;)/

/** The advice of a hint that can be followed by copying; nothing where it only explains. */
function adviceIn(hint: string): Advice | undefined {
  const [, spaces] = /^begin the line with (\d+|no) space/.exec(hint) ?? []
  if (spaces !== undefined) return { indent: spaces === 'no' ? 0 : Number(spaces) }
  const [, comma] = /^put a comma behind "([^"]*)"/.exec(hint) ?? []
  if (comma !== undefined) return { comma }
  if (hint.startsWith('take the # away before ')) {
    const lines = (hint.split(';')[0] ?? '').matchAll(/in line (\d+)/g)
    return { uncomment: [...lines].map(([, n]) => Number(n)) }
  }
  for (const found of hint.matchAll(lead)) {
    const rest = hint.slice(found.index + found[0].length)
    if (found[0].endsWith('did you mean ')) return { type: /^"([^"]*)"/.exec(rest)?.[1] ?? '' }
    if (found[0].endsWith('write ') && inWords.test(rest)) continue
    const type = aText.exec(rest)?.[0] ?? rest.split(/; |, the middle| or (?=[\d$])|, or /)[0] ?? ''
    return { type: type.replace(/ alone$/, '') }
  }
  return undefined
}

/** A text in quotes as it stood without them. */
const unquoted = (text: string): string =>
  text.startsWith('"')
    ? (JSON.parse(text) as string)
    : text.replace(/^'(.*)'$/, '$1').replaceAll("''", "'")

/** A line with what was typed in the place of what is marked, or of the entry that it names. */
function typed(line: string, { column, length }: Problem['place'], text: string): string {
  const from = column - 1
  const to = from + length
  if (text.startsWith('- ')) return line.slice(0, line.search(/\S/)) + text
  const [, key = '', value = ''] = /^([\w-]+):\s*(.*)$/.exec(text) ?? []
  if (key === '') return line.slice(0, from) + text + line.slice(to)
  // Of a name that is marked alone, the whole entry is typed anew.
  if (line[to] === ':') return line.slice(0, from) + text
  const before = line.lastIndexOf(`${key}:`, to)
  const begins = before === -1 ? from : before
  // A text that gets quotes stands in its line as it is, or with other quotes.
  const bare = /^["']/.test(value) ? unquoted(value) : ''
  const ends = [`'${bare}'`, bare].find((b) => bare !== '' && line.slice(begins).includes(b))
  const end = ends === undefined ? 0 : line.indexOf(ends, begins) + ends.length
  return line.slice(0, begins) + text + line.slice(Math.max(end, to))
}

/** A text in which the advice of a problem has been followed to the letter. */
export function withAdvice(text: string, { hint = '', place }: Problem): string | undefined {
  const advice = adviceIn(hint)
  if (!advice) return undefined
  const lines = text.split('\n')
  const at = place.line - 1
  const line = lines[at] ?? ''
  if ('uncomment' in advice)
    for (const n of advice.uncomment) lines[n - 1] = (lines[n - 1] ?? '').replace(/^#/, '')
  else if ('indent' in advice) lines[at] = ' '.repeat(advice.indent) + line.trim()
  else if ('comma' in advice) lines[at] = line.replace(advice.comma, `${advice.comma},`)
  else lines[at] = typed(line, place, advice.type)
  return lines.join('\n')
}
