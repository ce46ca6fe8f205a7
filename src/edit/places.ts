import { isCollection, isMap, isPair, isScalar, isSeq, type Node, type Pair } from 'yaml'

/** Offset of the first character of the line that holds an offset. */
export const lineStart = (text: string, at: number): number => text.lastIndexOf('\n', at - 1) + 1

/** Offset behind the last character of a line, before what ends it. */
export function lineEnd(text: string, at: number): number {
  const end = text.indexOf('\n', at)
  if (end === -1) return text.length
  return text[end - 1] === '\r' ? end - 1 : end
}

/** Offset of the first character behind what ends a line. */
export function nextLine(text: string, at: number): number {
  const end = text.indexOf('\n', at)
  return end === -1 ? text.length : end + 1
}

/** What ends the lines of a text. */
export const lineEnding = (text: string): string => (/\r\n/.test(text) ? '\r\n' : '\n')

/** Whether something stands in brackets. */
export const isFlow = (node: unknown): boolean => isCollection(node) && node.flow === true

export const startOf = (node: unknown): number => (node as Node).range?.[0] ?? 0

const isEmpty = (node: unknown): boolean =>
  node === null || (isScalar(node) && node.value === null && (node.source ?? '') === '')

/** Offset behind the colon of a pair. */
export const colonEnd = (text: string, pair: Pair): number =>
  text.indexOf(':', (pair.key as Node).range?.[1] ?? 0) + 1

/** Whether a pair has a key and nothing behind its colon. */
export const hasNoValue = (pair: Pair): boolean => isEmpty(pair.value)

/** Offset behind the last character of a value or pair itself, remarks left out. */
export function endOf(text: string, node: unknown): number {
  if (isPair(node)) return hasNoValue(node) ? colonEnd(text, node) : endOf(text, node.value)
  if ((isMap(node) || isSeq(node)) && !isFlow(node)) {
    const last = node.items.at(-1)
    return last === undefined ? startOf(node) : endOf(text, last)
  }
  const [from, to] = (node as Node).range ?? [0, 0]
  // A text over several lines ends with its last letter.
  return from + text.slice(from, to).trimEnd().length
}
