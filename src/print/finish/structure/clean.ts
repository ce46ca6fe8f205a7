import { type PDFDocument, PDFName } from '@cantoo/pdf-lib'
import { type Element, type Item, itemsIn, type Structure } from './tree.ts'

/** Elements that hold other elements and never content of their own (ISO 32000-1, 14.8.4.2). */
const grouping = new Set(['Document', 'Part', 'Art', 'Sect', 'Div', 'Aside', 'BlockQuote'])

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

/** An empty cell keeps its place in the row. */
const meaningfulWhenEmpty = new Set(['Document', 'TD', 'TH', 'TR'])

/** Where a box begins or ends, so that the words beside it are not one paragraph with its own. */
const edge = 'edge'

type Loose = Item | typeof edge

const isText = (item: Item): boolean => item.kind !== 'element' || inline.has(item.type)

const isPicture = (item: Item): boolean =>
  item.kind === 'element' && (item.type === 'Figure' || item.type === 'Formula')

/** What stands in boxes that mean nothing, without the boxes. */
function loosened(items: readonly Item[]): Loose[] {
  return items.flatMap((item): Loose[] => {
    if (item.kind !== 'element' || item.type !== 'NonStruct') return [item]
    // The browser puts every run of text into a box of its own.
    if (item.kids.every((k) => k.kind === 'content')) return item.kids
    return [edge, ...loosened(item.kids), edge]
  })
}

const bare = (items: readonly Loose[]): Item[] => items.filter((i) => i !== edge)

/** Blocks, each by itself, and what stands in lines between them. */
function runsIn(items: readonly Loose[]): Item[][] {
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

/**
 * Brings the structure that the browser writes to what ISO 32000-1 knows: boxes without a meaning
 * taken out, text that stood in them made paragraphs, items of lists with a body, formulas called
 * so, nothing empty.
 */
export function cleanStructure(document: PDFDocument, structure: Structure): void {
  const { context } = document

  const made = (type: string, kids: Item[]): Element => {
    const dict = context.obj({ Type: 'StructElem', S: type })
    return { kind: 'element', ref: context.register(dict), dict, type, kids }
  }

  const asBlock = (run: Item[]): Item[] =>
    run.every((i) => isPicture(i) || !isText(i)) ? run : [made('P', run)]

  /** Text between blocks becomes paragraphs. */
  const inParagraphs = (items: readonly Loose[]): Item[] => runsIn(items).flatMap(asBlock)

  /**
   * A cell or an item of a list holds its words directly, unless there are several blocks of them.
   */
  const inCell = (items: readonly Loose[]): Item[] => {
    const runs = runsIn(items)
    return runs.length > 1 ? runs.flatMap(asBlock) : (runs[0] ?? [])
  }

  /** Only figures of lines of text are formulas: drawings hold their content without elements. */
  const isFormula = (figure: Element): boolean =>
    figure.dict.has(PDFName.of('Alt')) &&
    figure.kids.some((k) => k.kind === 'element') &&
    [...itemsIn(figure.kids)].every(
      (k) => k.kind !== 'element' || k.type === 'NonStruct' || k.type === 'Span',
    )

  const cleanFigure = (figure: Element): void => {
    if (isFormula(figure)) {
      figure.type = 'Formula'
      figure.kids = [...itemsIn(figure.kids)].filter((i) => i.kind !== 'element')
    } else {
      // A figure without words around one that has them: the inner one is the picture.
      if (!figure.dict.has(PDFName.of('Alt')) && [...itemsIn(figure.kids)].some(isPicture))
        figure.type = 'Div'
      cleanKids(figure)
    }
  }

  const cleanKids = (element: Element): void => {
    const items = loosened(element.kids).flatMap((item): Loose[] => {
      if (item === edge || item.kind !== 'element') return [item]
      clean(item)
      return item.kids.length > 0 || meaningfulWhenEmpty.has(item.type) ? [item] : []
    })
    const isLabel = (i: Loose): boolean => i !== edge && i.kind === 'element' && i.type === 'Lbl'
    const isOf = (i: Item, ...types: string[]): boolean =>
      i.kind === 'element' && types.includes(i.type)
    if (element.type === 'LI') {
      const labels = bare(items.filter(isLabel))
      const body = inCell(items.filter((i) => !isLabel(i)))
      element.kids =
        body.length > 0
          ? [
              ...labels,
              body.length === 1 && body[0] && isOf(body[0], 'LBody')
                ? body[0]
                : made('LBody', body),
            ]
          : labels
    } else if (element.type === 'L') {
      element.kids = bare(items).map((i) =>
        isOf(i, 'LI', 'Caption') ? i : made('LI', [made('LBody', [i])]),
      )
    } else if (grouping.has(element.type)) element.kids = inParagraphs(items)
    else if (
      element.type === 'TD' ||
      element.type === 'TH' ||
      element.type === 'Caption' ||
      element.type === 'LBody'
    )
      element.kids = inCell(items)
    else element.kids = bare(items)
  }

  function clean(element: Element): void {
    if (element.type === 'Figure') cleanFigure(element)
    else cleanKids(element)
  }
  for (const top of structure.tops) clean(top)
}
