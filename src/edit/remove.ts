import { type Document, isMap, isScalar, isSeq, type Node } from 'yaml'
import type { Path } from '../read/read-yaml.ts'
import { endOf, isFlow, lineEnd, lineStart, nextLine, startOf } from './places.ts'

/** Something of a group or list that can be taken out. */
type Place = { readonly parent: Node; readonly index: number }

/** Where each step of a path stands, the outermost first. */
function placesOn(doc: Document, path: Path): readonly Place[] | undefined {
  const places: Place[] = []
  let node: unknown = doc.contents
  for (const step of path) {
    if (isMap(node)) {
      const map = node
      const index = map.items.findIndex(
        (p) => isScalar(p.key) && String(p.key.value) === String(step),
      )
      if (index === -1) return undefined
      places.push({ parent: map, index })
      node = map.items[index]?.value
    } else if (isSeq(node) && typeof step === 'number' && step < node.items.length) {
      places.push({ parent: node, index: step })
      node = node.items[step]
    } else return undefined
  }
  return places
}

const itemsOf = (parent: Node): readonly unknown[] =>
  isMap(parent) || isSeq(parent) ? parent.items : []

const startOfItem = (item: unknown): number =>
  startOf((item as { readonly key?: unknown }).key ?? item)

/** What stands before an item of a list in its line: spaces and its dash. */
function dashBefore(text: string, at: number): number {
  const dash = text.lastIndexOf('-', at - 1)
  return dash === -1 ? at : dash
}

const cut = (text: string, from: number, to: number): string => text.slice(0, from) + text.slice(to)

/** Takes one of several out of brackets, with its comma. */
function fromBrackets(text: string, items: readonly unknown[], index: number): string {
  const item = items[index]
  const next = items[index + 1]
  if (next !== undefined) return cut(text, startOfItem(item), startOfItem(next))
  return cut(text, endOf(text, items[index - 1]), endOf(text, item))
}

/** Takes lines out, the first of a group in a list excepted, whose line begins with the dash. */
function fromLines(text: string, { parent, index }: Place): string {
  const items = itemsOf(parent)
  const item = items[index]
  const at = startOfItem(item)
  const from = isSeq(parent) ? dashBefore(text, at) : at
  const begin = lineStart(text, from)
  const lead = text.slice(begin, from).replace('\uFEFF', '')
  const next = items[index + 1]
  if (lead.trim() !== '' && next !== undefined) {
    const nextAt = startOfItem(next)
    return cut(text, from, isSeq(parent) ? dashBefore(text, nextAt) : nextAt)
  }
  const end = endOf(text, item)
  const start = text.startsWith('\uFEFF', begin) ? begin + 1 : begin
  const to = nextLine(text, end)
  // The last line of a file that ends without a line end takes the one before it along.
  return to === text.length && !text.endsWith('\n') && start > 0
    ? cut(text, lineEnd(text, start - 2), to)
    : cut(text, start, to)
}

/** A text without an entry, and without the groups that this leaves empty. */
export function removed(text: string, doc: Document, path: Path): string | undefined {
  const places = placesOn(doc, path)
  if (!places) return undefined
  const place = places.findLast(({ parent }) => itemsOf(parent).length > 1) ?? places[0]
  if (!place) return undefined
  const { parent, index } = place
  return isFlow(parent) ? fromBrackets(text, itemsOf(parent), index) : fromLines(text, place)
}
