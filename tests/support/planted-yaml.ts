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

/** The first line of every entry of the file, and the line behind the last. */
const headsOf = (lines: readonly string[]): readonly number[] => [
  ...lines.flatMap((line, i) => (/^[^\s#]/.test(line) ? [i] : [])),
  lines.length,
]

/**
 * The lines by which is seen whether a change of one says something else: its entry of the file, and a
 * neighbour, which shows whether a head has lost its place. All others say what they have said.
 */
function around(heads: readonly number[], line: number): readonly [from: number, to: number] {
  const next = heads.findIndex((head) => head > line)
  return [heads[Math.max(0, next - 2)] ?? 0, heads[Math.max(2, next)] ?? line + 1]
}

const saidBy = (lines: readonly string[]): string | undefined => {
  try {
    return JSON.stringify(parse(lines.join('\n')))
  } catch {
    return undefined
  }
}

/**
 * Every single fault of typing that can be planted in a text and that changes what it says: quotes,
 * colons, spaces behind colons and dashes, brackets and indents lost, spaces and tabs put before
 * lines.
 */
export function plantedFaults(text: string): readonly Planted[] {
  const lines = text.split('\n')
  const heads = headsOf(lines)
  return lines.flatMap((line, i) => {
    if (isRemark(line)) return []
    const [from, to] = around(heads, i)
    const saidWith = (changed: string): string | undefined =>
      saidBy([...lines.slice(from, i), changed, ...lines.slice(i + 1, to)])
    const before = saidWith(line)
    const lost = lossesIn(line).map(
      ([what, at, length]) =>
        [`${what} lost`, line.slice(0, at) + line.slice(at + length)] as const,
    )
    return [...lost, ...additionsTo(line)]
      .filter(([, changed]) => saidWith(changed) !== before)
      .map(([what, changed]) => ({
        what,
        text: lines.with(i, changed).join('\n'),
        line: i + 1,
      }))
  })
}
