import { isEntryName } from '../../model/entry-names.ts'
import { inQuotes, keyBefore, type YamlFault } from './fault.ts'

/** Where a value ends, or what is wrong with it. */
export type ValueEnd = { readonly end: number; readonly fault: YamlFault | undefined }

const fault = (at: number, length: number, message: string, hint: string): ValueEnd => ({
  end: at,
  fault: { at, length, message, hint },
})

const fine = (end: number): ValueEnd => ({ end, fault: undefined })

/** A line that begins an entry or a point of a list, so that nothing opened above reaches into it. */
const entryLine = /^\s*(?:- +(?!\d)|-$|[a-z][a-z0-9-]*:(?:\s|$))/

const lineEnd = (text: string, at: number): number => {
  const end = text.indexOf('\n', at)
  return end === -1 ? text.length : end
}

/** Columns before the first word of the line that holds an offset, past its dashes. */
const columnOf = (text: string, at: number): number =>
  /^\s*(?:-\s+)*/.exec(text.slice(text.lastIndexOf('\n', at - 1) + 1, at))?.[0].length ?? 0

/**
 * Where the entry ends in which something was opened: before the first line that begins another, not
 * further in than the line that opened it.
 */
function reach(text: string, at: number): number {
  const column = columnOf(text, at)
  let end = lineEnd(text, at)
  while (end < text.length) {
    const next = lineEnd(text, end + 1)
    const line = text.slice(end + 1, next).replace(/\r$/, '')
    if (entryLine.test(line) && line.search(/\S/) <= column) return end
    end = next
  }
  return text.length
}

/** The quote that ends a text, past doubled apostrophes and escaped quotes. */
function closingQuote(text: string, at: number, limit: number): number {
  const mark = text[at]
  for (let i = at + 1; i < limit; i++) {
    if (mark === '"' && text[i] === '\\') i++
    else if (text[i] === mark) {
      if (mark === "'" && text[i + 1] === "'") i++
      else return i
    }
  }
  return -1
}

/** What may stand behind a closing quote or bracket: nothing, a comment, inside brackets the next. */
const follows = (inFlow: boolean): RegExp => (inFlow ? /^\s*(?:[,}\]:]|#|\r?$)/ : /^\s*(?:$|\s#)/)

/** A text in quotes that begins at an offset. */
function quotedEnd(text: string, at: number, inFlow: boolean): ValueEnd {
  const mark = text[at] ?? ''
  const close = closingQuote(text, at, reach(text, at))
  const line = text.slice(at, lineEnd(text, at)).replace(/\r$/, '')
  if (close === -1) {
    const inside = line.slice(1).replace(/(?<=\S)[\s,]*[\]}].*$/, '')
    return fault(
      at,
      line.length,
      'the quote that begins here is never closed',
      inside.length > 200
        ? `put ${mark} at the end of the text`
        : `put ${mark} at the end of the text: ${mark}${inside}${mark}`,
    )
  }
  const after = text.slice(close + 1, lineEnd(text, close + 1)).replace(/\r$/, '')
  if (follows(inFlow).test(after)) return fine(close + 1)
  const apostrophe = /^'([^"]*)'\s*$/.exec(line)?.[1]?.replaceAll("''", "'")
  return fault(
    close,
    1,
    mark === "'"
      ? "an apostrophe inside '…' ends the text here"
      : 'the text in quotes ends here, and something stands behind it',
    mark === "'"
      ? !inFlow && apostrophe !== undefined
        ? inQuotes(apostrophe, keyBefore(text, at))
        : 'put the text in "…" instead of \'…\', or write the apostrophe twice'
      : "use '…' round a text that holds \", or delete this quote",
  )
}

const names: Readonly<Record<string, string>> = { '{': '}', '[': ']' }

/** A plain word inside brackets, up to what ends it. */
function flowWord(text: string, at: number, limit: number): number {
  let i = at
  while (i < limit && !/[,[\]{}\n]/.test(text[i] ?? '')) {
    if (text[i] === ':' && /[\s,[\]{}]/.test(text[i + 1] ?? ' ')) break
    if (text[i] === '#' && /\s/.test(text[i - 1] ?? '')) break
    i++
  }
  return i
}

/** What is said in a group in braces behind a colon, up to the end of its line or the last brace. */
const restOf = (text: string, from: number): string =>
  text
    .slice(from, lineEnd(text, from))
    .replace(/\s*[\]}]*\s*\r?$/, '')
    .trim()

/** Whether a word names an entry in the same file. */
const isUsed = (text: string, word: string): boolean =>
  isEntryName(word) || new RegExp(`(?:^[\\s#-]*|[{,]\\s*)${word}:(?=\\s|$)`, 'm').test(text)

/**
 * A second colon inside one entry of a group: the comma before its key is missing, or it belongs to
 * the text.
 */
function missingComma(text: string, from: number, colon: number): YamlFault | undefined {
  const said = text.slice(from, colon)
  const second = /(?:^|\s)([a-z][a-z0-9-]*)$/.exec(said)
  if (!second) return undefined
  const word = second[1] ?? ''
  if (!isUsed(text, word))
    return {
      at: colon,
      length: 1,
      message: 'there is a colon inside this text',
      hint: inQuotes(restOf(text, from), keyBefore(text, from)),
    }
  return {
    at: colon - word.length,
    length: word.length + 1,
    message: `a comma is missing before "${word}"`,
    hint: `put a comma behind "${said.slice(0, said.length - word.length).trim()}"; or, where the colon is part of the text, ${inQuotes(restOf(text, from), keyBefore(text, from))}`,
  }
}

/** A group or list in brackets that begins at an offset. */
function flowEnd(text: string, start: number): ValueEnd {
  const open: number[] = []
  const limit = reach(text, start)
  // Where the value behind the last colon of this entry begins.
  let valueFrom = -1
  let i = start
  while (i < limit) {
    const c = text[i] ?? ''
    if (c === '{' || c === '[') {
      open.push(i++)
      valueFrom = -1
    } else if (c === '}' || c === ']') {
      const begun = open.pop() ?? start
      if (names[text[begun] ?? ''] !== c) return unclosed(text, begun, c)
      i++
      if (open.length === 0) return fine(i)
    } else if (c === '"' || c === "'") {
      const inside = quotedEnd(text, i, true)
      if (inside.fault) return inside
      i = inside.end
    } else if (c === ',') {
      i++
      valueFrom = -1
    } else if (c === ':') {
      if (valueFrom !== -1) {
        const comma = missingComma(text, valueFrom, i)
        if (comma) return { end: i, fault: comma }
      }
      i++
      valueFrom = i
    } else if (c === '#' && /\s/.test(text[i - 1] ?? ' ')) {
      const cut = cutBy(text, i, valueFrom)
      if (cut) return { end: i, fault: cut }
      i = lineEnd(text, i)
    } else if (/\s/.test(c)) i++
    else {
      const special = specialStart(text, i)
      if (special) return { end: i, fault: special }
      i = Math.max(i + 1, flowWord(text, i, limit))
    }
  }
  return unclosed(text, open.at(-1) ?? start)
}

function unclosed(text: string, at: number, instead = ''): ValueEnd {
  const mark = text[at] ?? '{'
  const line = text.slice(at, lineEnd(text, at)).replace(/\s+$/, '')
  const whole = line.endsWith(instead) ? line.slice(0, line.length - instead.length).trimEnd() : ''
  const isOneLine = reach(text, at) === lineEnd(text, at) && !/[{[#]/.test(whole.slice(1))
  return fault(
    at,
    line.length,
    `the ${mark} that begins here is never closed`,
    whole.length > 1 && whole.length < 200 && isOneLine
      ? `write ${whole}${mark === '{' ? ' }' : ']'}`
      : `put ${names[mark]} at the end of ${mark === '{' ? 'the group' : 'the list'}${instead === '' ? '' : `, before or instead of ${instead}`}`,
  )
}

/** A remark inside brackets that takes their end with it: `[Gate #2, Gate #3]`. */
function cutBy(text: string, at: number, valueFrom: number): YamlFault | undefined {
  const rest = text.slice(at, lineEnd(text, at))
  if (/\s/.test(rest[1] ?? ' ') || !/[\]}]\s*$/.test(rest)) return undefined
  const word = /^#[^,\]}]*/.exec(rest)?.[0].trimEnd() ?? '#'
  const before = /[^,[\]{}:]*$/.exec(text.slice(Math.max(valueFrom, 0), at))?.[0] ?? ''
  return {
    at,
    length: word.length,
    message: 'a # behind a space begins a remark, which takes the rest of the line with it',
    hint: inQuotes(`${before.trimStart()}${word}`, keyBefore(text, at - before.trimStart().length)),
  }
}

/** A text that begins with a mark that YAML keeps for itself. */
function specialStart(text: string, at: number): YamlFault | undefined {
  const c = text[at] ?? ''
  if (!'@`%!*&'.includes(c)) return undefined
  const word = text.slice(at, lineEnd(text, at)).replace(/\s*(?:[,}\]].*|#.*)?$/, '')
  return {
    at,
    length: word.length,
    message: `a text cannot begin with ${c}`,
    hint: inQuotes(word, keyBefore(text, at)),
  }
}

/** The line of a value with the brace that it lacks: behind its dash, or before the value. */
function withBrace(text: string, at: number): string {
  const from = text.lastIndexOf('\n', at - 1) + 1
  const line = text.slice(from, lineEnd(text, at)).replace(/\r$/, '')
  return /^\s*- /.test(line)
    ? line.trim().replace(/^- /, '- { ')
    : `${line.slice(0, at - from).trim()} { ${line.slice(at - from)}`
}

/** A value on one line without quotes or brackets. */
function plainEnd(text: string, at: number): ValueEnd {
  const end = lineEnd(text, at)
  const special = specialStart(text, at)
  if (special) return { end, fault: special }
  const value = text.slice(at, end).replace(/(?:\s+#.*)?\r?$/, '')
  const colon = /:(?:\s|$)/.exec(value)
  if (!colon) return fine(end)
  const braces = /[}]\s*$/.test(value)
  return fault(
    at + colon.index,
    1,
    braces ? 'this group has no { at its beginning' : 'there is a colon inside this text',
    braces ? `write ${withBrace(text, at)}` : inQuotes(value, keyBefore(text, at)),
  )
}

/**
 * Reads over one value. What is opened in it must be closed before the next entry begins.
 * @param at Offset of its first character, on whose line there is one.
 */
export function valueEnd(text: string, at: number): ValueEnd {
  const c = text[at] ?? ''
  const bracket = c === '{' || c === '['
  if (!bracket && c !== '"' && c !== "'") return plainEnd(text, at)
  const read = bracket ? flowEnd(text, at) : quotedEnd(text, at, false)
  if (read.fault) return read
  const after = /^[^\n]*/.exec(text.slice(read.end))?.[0].replace(/\r$/, '') ?? ''
  if (/^\s*(?:$|\s#)/.test(after)) return fine(read.end + after.length)
  const from = read.end + after.search(/\S/)
  return fault(
    from,
    after.trim().length,
    'something stands behind the end of this value',
    'delete it, begin a new line, or put # before a remark',
  )
}
