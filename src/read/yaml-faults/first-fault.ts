import { type Document, isScalar, visit, type YAMLError } from 'yaml'
import { disguise } from './disguise.ts'
import type { YamlFault } from './fault.ts'
import { hiddenHeadHint, hiddenHeads } from './hidden-head.ts'
import { lineFault } from './line-fault.ts'

const lineOf = (text: string, offset: number): number => text.slice(0, offset).split('\n').length

/** The key that stands twice in a group, with the line of the first. */
function duplicate(text: string, doc: Document, at: number): YamlFault | undefined {
  let found: YamlFault | undefined
  visit(doc, {
    Map(_, map) {
      const second = map.items.find((p) => isScalar(p.key) && p.key.range?.[0] === at)
      if (!second || !isScalar(second.key)) return undefined
      const { value } = second.key
      const first = map.items.find((p) => p !== second && isScalar(p.key) && p.key.value === value)
      const from = isScalar(first?.key) ? (first.key.range?.[0] ?? 0) : 0
      found = {
        at,
        length: String(value).length,
        message: `"${value}" stands twice in this group; the first is in line ${lineOf(text, from)}`,
        hint:
          value === 'id' || value === 'name' || value === 'of' || value === 'date'
            ? `keep one of the two; if this begins a new entry of the list, put "- " before it`
            : 'keep one of the two lines',
      }
      return visit.BREAK
    },
  })
  return found
}

/** What to type for each fault of the parser that can still be the first. */
const advice: Readonly<Record<string, readonly [message: string, hint: string]>> = {
  BAD_DQ_ESCAPE: [
    'a \\ in a text in "…" begins a code that does not exist',
    'use \'…\' instead of "…", or write the \\ twice',
  ],
  BAD_INDENT: [
    'this line begins at the wrong place',
    'entries of one group begin below each other; what belongs to an entry begins 2 spaces further in',
  ],
  BAD_SCALAR_START: ['a text cannot begin with this character', 'put the text in quotes'],
  MISSING_CHAR: [
    'a comma, quote or bracket is missing here',
    'look at what was opened before this',
  ],
  TAB_AS_INDENT: [
    'the line begins with a tab',
    'type spaces with the space bar instead, as many as the line above has',
  ],
}

const fallback: readonly [string, string] = [
  'this cannot be read',
  'a line is "key: value" or "- value"; a text that holds a colon, a comma in { } or a mark such as # stands in quotes',
]

const isRemark = (line: string): boolean => /^\s*(?:#.*)?$/.test(line)

/**
 * An entry whose group still has its head behind a #, at a fault or the first one behind it: the
 * fault then is that the head says nothing.
 */
function underRemark(text: string, at: number): YamlFault | undefined {
  const lines = text.split('\n')
  let line = lineOf(text, at)
  while (line <= lines.length && isRemark(lines[line - 1] ?? '')) line++
  const heads = hiddenHeads(lines, line, true)
  const group = heads.map(({ name }) => name).join('.')
  if (group === '') return undefined
  const shown = (lines[line - 1] ?? '').trim()
  const name = /^(?:- *\{? *)?([^\s:]+):/.exec(shown)?.[1] ?? shown
  return {
    at:
      lines.slice(0, line - 1).join('\n').length +
      (line > 1 ? 1 : 0) +
      (lines[line - 1] ?? '').search(/\S/),
    length: Math.max(1, shown.length),
    message: `"${name}" belongs to "${group}", whose head is still a remark`,
    hint: hiddenHeadHint(heads),
  }
}

/** Nesting deeper than any file of this kind would make a search over the whole of it slow. */
const longest = 400_000

/** The first fault of a text that the parser refuses, where it began. */
export function firstFault(text: string, doc: Document, errors: readonly YAMLError[]): YamlFault {
  const known = disguise(text)
  if (known) return known
  const first = errors.toSorted((a, b) => a.pos[0] - b.pos[0])[0]
  const line = text.length > longest ? undefined : lineFault(text)
  const from = Math.min(first?.pos[0] ?? 0, text.length)
  const under =
    text.length > longest
      ? undefined
      : [from, line?.at ?? from].map((offset) => underRemark(text, offset)).find((f) => f)
  if (under) return under
  if (first?.code === 'DUPLICATE_KEY' && (line === undefined || line.at > first.pos[0])) {
    const twice = duplicate(text, doc, first.pos[0])
    if (twice) return twice
  }
  if (line) return line
  const at = from
  const [message, hint] = advice[first?.code ?? ''] ?? fallback
  return { at, length: Math.max(1, Math.min((first?.pos[1] ?? 1) - at, 80)), message, hint }
}
