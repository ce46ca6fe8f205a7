/** How a line that holds something is made. */
export type Line = {
  /** Offset of the line. */
  readonly at: number
  /** Columns before its first character, and before what stands behind its dashes. */
  readonly indent: number
  readonly inner: number
  /** Columns of its dashes. */
  readonly dashes: readonly number[]
  readonly key: string | undefined
  /** What stands behind the key and its colon, or behind the dash; '' for nothing. */
  readonly value: string
  readonly valueAt: number
}

const keyPattern =
  /^("[^"\n]*"|'[^'\n]*'|[^\s#{}[\],&*!|>'"%@`][^:\n]*?|[^\s#{}[\],&*!|>'"%@`]\S*?)\s*:(?=\s|$)/

/** @param at Offset of the line. */
export function readLine(raw: string, at: number): Line {
  const indent = raw.search(/\S/)
  let rest = raw.slice(indent)
  let inner = indent
  const dashes: number[] = []
  for (let m = /^-(?:\s+|$)/.exec(rest); m; m = /^-(?:\s+|$)/.exec(rest)) {
    dashes.push(inner)
    inner += m[0].length
    rest = rest.slice(m[0].length)
  }
  const key = keyPattern.exec(rest)
  const behind = key ? rest.slice(key[0].length) : rest
  const lead = behind.length - behind.trimStart().length
  const value = behind.trim().replace(/^#.*/, '')
  const valueAt = at + inner + (key?.[0].length ?? 0) + lead
  return { at, indent, inner, dashes, key: key?.[1], value, valueAt }
}

/** Whether a line begins a point of a list. */
export const isPoint = ({ dashes }: Line): boolean => dashes.length > 0

/** Whether what stands deeper below a line belongs to it. */
export const opensGroup = (line: Line | undefined): boolean =>
  line === undefined ||
  (line.key !== undefined && line.value === '') ||
  (isPoint(line) && line.key === undefined && line.value === '')

/** A text behind a key may go on in deeper lines. */
export const isPlainText = (line: Line | undefined): boolean =>
  line !== undefined && line.value !== '' && !/^["'{[|>]/.test(line.value)
