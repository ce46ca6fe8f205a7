import { isEntryIn, isEntryName } from '../../model/entry-names.ts'
import type { YamlFault } from './fault.ts'
import { isPlainText, isPoint, type Line, opensGroup, readLine } from './line.ts'
import { valueEnd } from './value-fault.ts'

/** What the lines read so far allow of the next one. */
type State = {
  /** Columns at which entries of the groups and lists that are open begin, outermost first. */
  readonly levels: number[]
  /** The last line that holds something, and the one before it. */
  last: Line | undefined
  before: Line | undefined
  /** The levels that were left last, and the line that left them. */
  left: { readonly levels: readonly number[]; readonly by: Line } | undefined
  /** Lines deeper than this are the text of the entry above. */
  textDeeper: number | undefined
}

const spaces = (n: number): string => (n === 1 ? '1 space' : `${n} spaces`)

const at = (line: Line, raw: string, message: string, hint: string): YamlFault => ({
  at: line.at + line.indent,
  length: Math.max(1, raw.trim().length),
  message,
  hint,
})

const named = (line: Line): string => (line.key ? `"${line.key}"` : 'this line')

/** Lines of a file as they stand, to show one in a message. */
type Raw = (line: Line) => string

function oddIndent(line: Line, raw: Raw, wanted: number | undefined): YamlFault {
  const begins = line.indent === 0 ? 'at the margin' : `with ${spaces(line.indent)}`
  return at(
    line,
    raw(line),
    `${named(line)} begins ${begins}, unlike the entries beside it`,
    wanted === undefined
      ? 'entries of one group begin below each other'
      : `begin the line with ${wanted === 0 ? 'no space' : spaces(wanted)}; entries of one group begin below each other`,
  )
}

/** A line without a key: the colon, the space behind it, or the dash before it is missing. */
function noKey(line: Line, raw: Raw): YamlFault {
  const text = raw(line).trim()
  const close = /^(-\s+)?([A-Za-z][\w-]*):(\S.*)$/.exec(text)
  if (close)
    return at(
      line,
      text,
      `there is no space behind the colon of "${close[2]}"`,
      `write ${close[1] ?? ''}${close[2]}: ${close[3] ?? ''}`,
    )
  if (/^-\S/.test(text))
    return at(line, text, 'there is no space behind the dash', `write - ${text.slice(1)}`)
  const [, word = '', rest = ''] = /^(?:-\s+)?([A-Za-z][\w-]*)(?:\s+(.+))?$/.exec(text) ?? []
  const aLine = 'a line is "key: value" or "- value"; a remark begins with #'
  if (word === '') return at(line, text, 'this line belongs to no entry', aLine)
  if (rest === '' && isEntryName(word))
    return at(line, text, `there is no colon behind "${word}"`, `write ${word}:`)
  // Words that begin with no name of an entry are a text that goes on, or no part of the file.
  if (rest !== '' && (isEntryName(word) || /^\d/.test(rest)))
    return at(
      line,
      text,
      'there is no colon in this line',
      `write ${/^-\s+/.exec(text)?.[0] ?? ''}${word}: ${rest}; if it goes on with the line above, put both on one line`,
    )
  return at(
    line,
    text,
    'there is no colon in this line',
    `if it goes on with the line above, put both on one line; else ${aLine}`,
  )
}

const isFirstOf = (line: Line, parent: Line): boolean =>
  parent.key !== undefined && parent.value === '' && line.indent > parent.inner

/** The line that left the group to which this one goes back: it lost its indent. */
const leaver = (line: Line, { left }: State): Line | undefined =>
  left?.levels.includes(line.indent) ? left.by : undefined

/** A point of a list whose dash was moved away from the entries below it. */
const movedDash = (line: Line, last: Line | undefined): Line | undefined =>
  last && isPoint(last) && last.indent % 2 === 1 && Math.abs(last.inner - line.indent) === 1
    ? last
    : undefined

/** A value behind the head of a group, whose entries follow: `crew: 3 volunteers`. */
function valueOfGroup(head: Line, line: Line, raw: Raw): YamlFault | undefined {
  const isGroup =
    isPlainText(head) && isEntryIn(head.key ?? '', line.key ?? '') && line.indent === head.inner + 2
  if (!isGroup) return undefined
  return {
    at: head.valueAt,
    length: Math.max(1, head.value.length),
    message: `"${head.key}" is a group, and its entries stand below it: nothing stands behind its colon`,
    hint: `write ${raw(head)
      .slice(head.indent, head.valueAt - head.at)
      .trimEnd()} # ${head.value}`,
  }
}

/** A line that lies deeper than those above it, where nothing was opened. */
function tooDeep(line: Line, state: State, raw: Raw): YamlFault {
  const { last, before } = state
  const both = last && valueOfGroup(last, line, raw)
  if (both) return both
  // The line above lost what would have opened a group.
  if (last && isPoint(last) && last.key === undefined && last.inner === line.indent)
    return noKey(last, raw)
  const moved = movedDash(line, last)
  if (moved) return oddIndent(moved, raw, line.indent - (moved.inner - moved.indent))
  // The line above should have stood below a key that is left with nothing.
  const childless = last && before?.key !== undefined && before.value === ''
  if (childless && (last.indent <= before.inner || line.indent === before.inner + 2))
    return oddIndent(last, raw, line.indent)
  const by = leaver(line, state)
  if (by && by === last) return oddIndent(by, raw, line.indent - (by.inner - by.indent))
  return oddIndent(line, raw, state.levels.at(-1))
}

/** A line between two levels: it is odd itself, or what stands before it. */
function between(line: Line, level: number, state: State, raw: Raw): YamlFault {
  const { last, before, levels } = state
  const moved = movedDash(line, last)
  if (moved) return oddIndent(moved, raw, line.indent - (moved.inner - moved.indent))
  const parent = levels.at(-1)
  const first = last && (before === undefined || isFirstOf(last, before)) && last.indent === level
  const steps = parent === undefined ? line.indent === 0 : line.indent === parent + 2
  const by = leaver(line, state)
  // Two levels deeper than the line that left: that line lies one level too far to the left.
  if (by && level - by.indent === 4) return oddIndent(by, raw, line.indent)
  return first && steps ? oddIndent(last, raw, line.indent) : oddIndent(line, raw, level)
}

/** Takes up the level of a line, or says why it has none. */
function takeLevel(line: Line, state: State, raw: Raw): YamlFault | undefined {
  const { levels, last } = state
  const gone: number[] = []
  while ((levels.at(-1) ?? -1) > line.indent) gone.push(levels.pop() ?? 0)
  const left = gone.at(-1)
  const top = levels.at(-1)
  if (top !== line.indent) {
    if (left !== undefined) return between(line, left, state, raw)
    if (!opensGroup(last)) return tooDeep(line, state, raw)
    levels.push(line.indent)
  }
  if (left !== undefined) state.left = { levels: gone, by: line }
  levels.push(...line.dashes.slice(1))
  if (isPoint(line) && line.key !== undefined) levels.push(line.inner)
  return undefined
}

function judge(line: Line, state: State, raw: Raw, text: string): YamlFault | undefined {
  const { last } = state
  if (/^-[^\s\d-]/.test(raw(line).trim()) && line.key !== undefined) return noKey(line, raw)
  if (line.key === undefined && !isPoint(line) && last && !/^[{["']/.test(line.value)) {
    // A text on a line of its own goes on with the one above, or is the value of its key.
    const goesOn = isPlainText(last) && line.indent > last.indent && !/^[\w-]+:\S/.test(line.value)
    const isValue = opensGroup(last) && line.indent > last.indent
    if (!goesOn && !isValue) return noKey(line, raw)
    return undefined
  }
  if (
    last &&
    last.key === undefined &&
    !isPoint(last) &&
    line.indent >= last.indent &&
    isPlainText(last)
  )
    return noKey(last, raw)
  return takeLevel(line, state, raw) ?? doubled(line, text)
}

/** `key: - value`: a list begins on a line of its own. */
function doubled(line: Line, text: string): YamlFault | undefined {
  if (line.key === undefined || !/^-\s/.test(line.value)) return undefined
  return {
    at: line.valueAt,
    length: line.value.length,
    message: `a list cannot begin on the line of "${line.key}"`,
    hint: `begin a new line behind "${line.key}:", 2 spaces further in: ${text.slice(line.valueAt, line.valueAt + line.value.length)}`,
  }
}

/** How many spaces most likely belong before a line: as many as the line above has, or 2 more. */
const usualIndent = ({ last }: State): number =>
  last === undefined ? 0 : opensGroup(last) ? last.inner + 2 : last.indent

/** Tabs and spaces that only look like one, before the first character of a line. */
function oddSpace(raw: string, offset: number, state: State): YamlFault | undefined {
  const lead = /^[^\S\n\r]*/.exec(raw)?.[0] ?? ''
  const odd = lead.search(/[^ ]/)
  if (odd === -1 || raw.trim() === '') return undefined
  const wanted = usualIndent(state)
  const beside = state.last !== undefined && !opensGroup(state.last)
  return {
    at: offset + odd,
    length: 1,
    message:
      lead[odd] === '\t'
        ? 'the line begins with a tab'
        : 'the line begins with a space that only looks like one',
    hint: `begin the line with ${wanted === 0 ? 'no space' : `${spaces(wanted)}, typed with the space bar`}${beside && wanted > 0 ? '; so many stand before the line above' : ''}`,
  }
}

const isMarker = (raw: string): boolean => /^(---|\.\.\.)\s*$/.test(raw)

/** What some editors put before the first line. */
const byteOrder = '\uFEFF'

/** The first line that cannot stand where it stands; made for files that are known to be broken. */
export function lineFault(text: string): YamlFault | undefined {
  const state: State = {
    levels: [],
    last: undefined,
    before: undefined,
    left: undefined,
    textDeeper: undefined,
  }
  const raw: Raw = (line) => /^[^\r\n]*/.exec(text.slice(line.at))?.[0] ?? ''
  for (let offset = text.startsWith(byteOrder) ? 1 : 0; offset < text.length; ) {
    const end = text.indexOf('\n', offset)
    const next = end === -1 ? text.length : end + 1
    const shown = text.slice(offset, next).replace(/\r?\n$/, '')
    const from = offset
    offset = next
    if (/^\s*(?:#.*)?$/.test(shown)) continue
    if (state.textDeeper !== undefined && shown.search(/\S/) > state.textDeeper) continue
    state.textDeeper = undefined
    const space = oddSpace(shown, from, state)
    if (space) return space
    if (isMarker(shown)) {
      if (state.last === undefined) continue
      return {
        at: from,
        length: shown.trim().length,
        message: `a line of ${shown.trim()} ends the file before its end`,
        hint: 'delete this line',
      }
    }
    const line = readLine(shown, from)
    const wrong = judge(line, state, raw, text)
    if (wrong) return wrong
    if (/^[|>]/.test(line.value)) state.textDeeper = line.inner
    else if (line.value !== '') {
      const { end: stop, fault } = valueEnd(text, line.valueAt)
      if (fault) return fault
      if (stop > offset) offset = Math.max(offset, text.indexOf('\n', stop) + 1 || text.length)
    }
    state.before = state.last
    state.last = line
  }
  return undefined
}
