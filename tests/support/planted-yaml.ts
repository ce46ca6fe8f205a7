import { parse } from 'yaml'

/** A text with one character or indent too few or too many, and the line that this is in. */
type Planted = {
  readonly what: string
  readonly text: string
  readonly line: number
}

/** Lines whose shape is that of YAML; remarks are left alone. */
const isRemark = (line: string): boolean => /^\s*(#|$)/.test(line)

/** What stands before a remark at the end of a line. */
const spoken = (line: string): string => line.replace(/\s+#.*$/, '')

const isQuoted = (line: string, at: number): boolean =>
  (line.slice(0, at).match(/"/g) ?? []).length % 2 === 1

/** Every place of a line where something can be lost, with what is lost. */
function lossesIn(line: string): readonly (readonly [what: string, at: number, length: number])[] {
  const text = spoken(line)
  const all = (pattern: RegExp, what: string) =>
    [...text.matchAll(pattern)].map((m) => [what, m.index, 1] as const)
  const indent = line.search(/\S/)
  return [
    // An apostrophe inside a word is part of the text, and so is a colon in quotes.
    ...all(/"|(?<![a-z])'|'(?![a-z])/g, 'quote'),
    ...all(/:(?=\s|$)/g, 'colon').filter(([, at]) => !isQuoted(text, at)),
    ...all(/(?<=:) (?=\S)/g, 'space behind a colon').filter(([, at]) => !isQuoted(text, at)),
    ...all(/(?<=^\s*-) /g, 'space behind a dash'),
    ...all(/[[\]{}]/g, 'bracket'),
    ...(indent > 0 ? ([['a space of the indent', 0, 1]] as const) : []),
    ...(indent > 1 ? ([['an indent', 0, 2]] as const) : []),
  ]
}

/** What is too much in a line. */
function additionsTo(line: string): readonly (readonly [what: string, line: string])[] {
  return [
    ['a space too many', ` ${line}`],
    ['a tab', `\t${line.trimStart()}`],
  ]
}

/**
 * Every single fault of typing that can be planted in a text and that changes what it says: quotes,
 * colons, spaces behind colons and dashes, brackets and indents lost, spaces and tabs put before
 * lines.
 */
export function plantedFaults(text: string): readonly Planted[] {
  const lines = text.split('\n')
  const before = JSON.stringify(parse(text))
  const without = (i: number, changed: string): string =>
    [...lines.slice(0, i), changed, ...lines.slice(i + 1)].join('\n')
  const saysTheSame = (spoiled: string): boolean => {
    try {
      return JSON.stringify(parse(spoiled)) === before
    } catch {
      return false
    }
  }
  return lines.flatMap((line, i) => {
    if (isRemark(line)) return []
    const lost = lossesIn(line).map(([what, at, length]) => ({
      what: `${what} lost`,
      text: without(i, line.slice(0, at) + line.slice(at + length)),
      line: i + 1,
    }))
    const added = additionsTo(line).map(([what, changed]) => ({
      what,
      text: without(i, changed),
      line: i + 1,
    }))
    return [...lost, ...added].filter((p) => !saysTheSame(p.text))
  })
}
