import { hasEntry } from '../../pdf/dictionaries.ts'
import type { PdfDocument } from '../../pdf/kinds.ts'
import { edge, isOf, isText, type Loose, loosened, runsIn, withoutEdges } from './loose-items.ts'
import { makeElement } from './make-element.ts'
import { type Element, type Item, itemsIn, type Structure } from './structure.ts'

/** Elements that hold other elements and never content of their own (ISO 32000-1, 14.8.4.2). */
const grouping = new Set(['Document', 'Part', 'Art', 'Sect', 'Div', 'Aside', 'BlockQuote'])

/** An empty cell keeps its place in the row. */
const meaningfulWhenEmpty = new Set(['Document', 'TD', 'TH', 'TR'])

/** Elements that hold either words or blocks. */
const cells = new Set(['TD', 'TH', 'Caption', 'LBody'])

const isPicture = (item: Item): boolean => isOf(item, 'Figure', 'Formula')

const asBlock = (document: PdfDocument, run: Item[]): Item[] =>
  run.every((i) => isPicture(i) || !isText(i)) ? run : [makeElement(document, 'P', run)]

/** Text between blocks becomes paragraphs. */
const inParagraphs = (document: PdfDocument, items: readonly Loose[]): Item[] =>
  runsIn(items).flatMap((run) => asBlock(document, run))

/** A cell or an item of a list holds its words directly, unless there are several blocks of them. */
function inCell(document: PdfDocument, items: readonly Loose[]): Item[] {
  const runs = runsIn(items)
  return runs.length > 1 ? runs.flatMap((run) => asBlock(document, run)) : (runs[0] ?? [])
}

/** Labels, and one body with all the rest. */
function inListItem(document: PdfDocument, items: readonly Loose[]): Item[] {
  const labels = withoutEdges(items.filter((i) => isOf(i, 'Lbl')))
  const body = inCell(
    document,
    items.filter((i) => !isOf(i, 'Lbl')),
  )
  const [first] = body
  if (!first) return labels
  const isBody = body.length === 1 && isOf(first, 'LBody')
  return [...labels, isBody ? first : makeElement(document, 'LBody', body)]
}

const inList = (document: PdfDocument, items: readonly Loose[]): Item[] =>
  withoutEdges(items).map((i) =>
    isOf(i, 'LI', 'Caption')
      ? i
      : makeElement(document, 'LI', [makeElement(document, 'LBody', [i])]),
  )

function kidsFor(document: PdfDocument, type: string, items: readonly Loose[]): Item[] {
  if (type === 'LI') return inListItem(document, items)
  if (type === 'L') return inList(document, items)
  if (grouping.has(type)) return inParagraphs(document, items)
  return cells.has(type) ? inCell(document, items) : withoutEdges(items)
}

function cleanKids(document: PdfDocument, element: Element): void {
  const items = loosened(element.kids).flatMap((item): Loose[] => {
    if (item === edge || item.kind !== 'element') return [item]
    cleanElement(document, item)
    return item.kids.length > 0 || meaningfulWhenEmpty.has(item.type) ? [item] : []
  })
  element.kids = kidsFor(document, element.type, items)
}

/** Only figures of lines of text are formulas: drawings hold their content without elements. */
const isFormula = (figure: Element): boolean =>
  hasEntry(figure.dictionary, 'Alt') &&
  figure.kids.some((k) => k.kind === 'element') &&
  [...itemsIn(figure.kids)].every((k) => k.kind !== 'element' || isOf(k, 'NonStruct', 'Span'))

function cleanFigure(document: PdfDocument, figure: Element): void {
  if (isFormula(figure)) {
    figure.type = 'Formula'
    figure.kids = [...itemsIn(figure.kids)].filter((i) => i.kind !== 'element')
    return
  }
  // A figure without words around one that has them: the inner one is the picture.
  if (!hasEntry(figure.dictionary, 'Alt') && [...itemsIn(figure.kids)].some(isPicture))
    figure.type = 'Div'
  cleanKids(document, figure)
}

function cleanElement(document: PdfDocument, element: Element): void {
  if (element.type === 'Figure') cleanFigure(document, element)
  else cleanKids(document, element)
}

/**
 * Brings the structure that the browser writes to what ISO 32000-1 knows: boxes without a meaning
 * taken out, text that stood in them made paragraphs, items of lists with a body, formulas called
 * so, nothing empty.
 */
export function cleanStructure(document: PdfDocument, { tops }: Structure): void {
  for (const top of tops) cleanElement(document, top)
}
