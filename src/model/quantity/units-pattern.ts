import { aboutBefore, aboutBehind } from './as-said.ts'
import { type Dims, dimensionless, findUnit, multiplyDims, sameDims, unitNames } from './units.ts'
import { wordsOfNumbers } from './words-of-numbers.ts'

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&')

/** A name in any case, where it may be written so. */
const anyCase = (name: string): string =>
  name.length > 2
    ? [...name]
        .map((c) =>
          c.toLowerCase() === c.toUpperCase()
            ? escaped(c)
            : `[${c.toLowerCase()}${c.toUpperCase()}]`,
        )
        .join('')
    : escaped(name)

/** Units of one dimension with all ways to write them, as alternatives of a pattern. */
type Group = { readonly dims: Dims; readonly names: string[] }

function grouped(): readonly Group[] {
  const groups: Group[] = []
  const add = (dims: Dims, name: string): void => {
    const group = groups.find((g) => sameDims(g.dims, dims))
    if (group) group.names.push(name)
    else groups.push({ dims, names: [name] })
  }
  for (const name of unitNames) {
    const dims = findUnit(name)?.dims
    if (!dims) continue
    add(dims, anyCase(name))
    const [length, ...rest] = dims
    if (length !== 1 || rest.some((d) => d !== 0)) continue
    const squared = multiplyDims(dims, dims, 1)
    add(squared, `(?:${anyCase(name)}(?:\\^?2|²)|(?:sq|square)\\.?\\s+${anyCase(name)})`)
    add(
      multiplyDims(squared, dims, 1),
      `(?:${anyCase(name)}(?:\\^?3|³)|(?:cu|cubic)\\.?\\s+${anyCase(name)})`,
    )
  }
  // Of stone a yard is a cubic yard.
  for (const name of unitNames.filter((n) => findUnit(n)?.id === 'yd'))
    add([3, 0, 0, 0, 0, 0], anyCase(name))
  return groups
}

const groups = grouped()
const either = (names: readonly string[]): string => `(?:${names.join('|')})`

/** Units of a dimension: single ones, and one over another. */
function unitsOf(dims: Dims): string {
  const single = groups.filter((g) => sameDims(g.dims, dims)).flatMap((g) => g.names)
  const ratios = groups.flatMap((over) =>
    groups
      .filter((under) => sameDims(multiplyDims(over.dims, under.dims, -1), dims))
      .map(
        (under) =>
          `${either(over.names)}(?:\\s*/\\s*|\\s+(?:per|an?)\\s+)(?:\\d[\\d,]*\\s*|k)?${either(under.names)}`,
      ),
  )
  return either([...single, ...ratios])
}

const fraction = '\\d+\\s*[/⁄]\\s*\\d+'
const number = `[-+−]?(?:${fraction}|(?:(?:\\d{1,3}(?:,\\d{3})+|\\d+)(?:\\.\\d+)?|\\.\\d+)(?:[ -]+${fraction}|\\s*[½¼¾⅛⅜⅝⅞⅓⅔])?|[½¼¾⅛⅜⅝⅞⅓⅔])`
const clock = '\\d{1,2}:[0-5]\\d(?:\\s*[apAP]\\.?[mM]\\.?)?'

const inAnyCase = (pattern: string): string =>
  pattern.replace(/\\.|[a-z]/g, (c) => (c.length > 1 ? c : `[${c}${c.toUpperCase()}]`))

/** Quantities that are said in words, wholly or in part: which of them are read, no pattern tells. */
const inWords = `(?:.*[\\d\\s$€£-])?${inAnyCase(either(wordsOfNumbers))}s?(?:[\\s-].*)?`
const [about, orSo] = [inAnyCase(aboutBefore), inAnyCase(aboutBehind)]

const known = new Map<string, string>()

/**
 * A pattern of quantities of a dimension as people write them, each unit in all its ways. Whatever
 * the program reads fits; it says nothing of ranges, and lets through what is said in words.
 * @param isPlain Whether a number alone will do.
 */
export function quantityPattern(dims: Dims, isPlain: boolean): string {
  const key = `${dims.join(' ')} ${isPlain}`
  const before = known.get(key)
  if (before !== undefined) return before
  const units = unitsOf(dims)
  const part = `${number}\\s*${units}\\.?`
  const [, , time, , money] = dims
  const under = money === 1 ? unitsOf(multiplyDims([0, 0, 0, 0, 1, 0], dims, -1)) : ''
  const ways = [
    `${part}(?:\\s*${part})*`,
    inWords,
    ...(isPlain ? [`${number}(?:\\s+[a-zA-Z][a-zA-Z -]*)?`] : []),
    ...(sameDims(dims, dimensionless) ? [`.*\\d.*\\s(?:in|per|over|for every)\\s.*\\d.*`] : []),
    ...(sameDims(dims, [0, 0, 1, 0, 0, 0]) && time === 1 ? [clock] : []),
    ...(money === 1
      ? [
          dims.filter((d) => d !== 0).length === 1
            ? `[$€£]\\s*${number}`
            : `[$€£]\\s*${number}(?:\\s*/\\s*|\\s+(?:per|an?)\\s+)(?:\\d[\\d,]*\\s*|k)?${under}`,
        ]
      : []),
  ]
  const pattern = `^\\s*(?:${about}\\s*)?(?:${ways.join('|')})(?:\\s*,?\\s*${orSo})?\\s*$`
  known.set(key, pattern)
  return pattern
}
