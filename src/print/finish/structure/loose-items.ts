import type { Item } from './structure.ts'

/** Elements that stand in a line of text. */
const inline = new Set([
  'Span',
  'Em',
  'Strong',
  'Code',
  'Quote',
  'Link',
  'Reference',
  'Note',
  'Figure',
  'Formula',
  'Form',
])

/** Where a box begins or ends, so that the words beside it are not one paragraph with its own. */
export const edge = 'edge'

export type Loose = Item | typeof edge

export const isOf = (item: Loose, ...types: readonly string[]): boolean =>
  item !== edge && item.kind === 'element' && types.includes(item.type)

/** Whether an item stands in a line, and not as a block by itself. */
export const isText = (item: Item): boolean => item.kind !== 'element' || inline.has(item.type)

/** What stands in boxes that mean nothing, without the boxes. */
export function loosened(items: readonly Item[]): Loose[] {
  return items.flatMap((item): Loose[] => {
    if (item.kind !== 'element' || item.type !== 'NonStruct') return [item]
    // The browser puts every run of text into a box of its own.
    if (item.kids.every((k) => k.kind === 'content')) return item.kids
    return [edge, ...loosened(item.kids), edge]
  })
}

export const withoutEdges = (items: readonly Loose[]): Item[] => items.filter((i) => i !== edge)

/** Blocks, each by itself, and what stands in lines between them. */
export function runsIn(items: readonly Loose[]): Item[][] {
  const runs: Item[][] = []
  let run: Item[] = []
  const close = (): void => {
    if (run.length > 0) runs.push(run)
    run = []
  }
  for (const item of items) {
    if (item !== edge && isText(item)) run.push(item)
    else {
      close()
      if (item !== edge) runs.push([item])
    }
  }
  close()
  return runs
}
