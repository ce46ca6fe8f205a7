import type { PdfDocument, PdfReference } from '../../pdf/kinds.ts'
import { markArtifacts } from '../artifacts.ts'
import { cleanStructure } from './clean.ts'
import { readStructure } from './read-structure.ts'
import { type Element, type Item, itemsIn, type Structure } from './structure.ts'
import { tagWidgets } from './widgets.ts'
import { writeStructure } from './write-structure.ts'

/** Marks of items of lists may be drawn, as drawings are. */
const drawn = new Set(['Figure', 'Formula', 'Lbl'])

function drawnContent({ all }: Structure): Map<PdfReference, Set<number>> {
  const found = new Map<PdfReference, Set<number>>()
  for (const element of all) {
    if (!drawn.has(element.type)) continue
    for (const item of itemsIn(element.kids)) {
      if (item.kind !== 'content') continue
      const of = found.get(item.page)
      if (of) of.add(item.mcid)
      else found.set(item.page, new Set([item.mcid]))
    }
  }
  return found
}

function withoutContent(
  element: Element,
  gone: ReadonlyMap<PdfReference, ReadonlySet<number>>,
): void {
  const stays = (item: Item): boolean =>
    item.kind !== 'content' || !gone.get(item.page)?.has(item.mcid)
  element.kids = element.kids.filter(stays)
}

/**
 * Separates content from decoration and sets the structure tree in order. Documents to be merged
 * may each be put in order first.
 */
export function orderStructure(document: PdfDocument): void {
  const structure = readStructure(document)
  const kept = structure ? drawnContent(structure) : new Map<PdfReference, Set<number>>()
  const decoration = markArtifacts(document, (page, mcid) => kept.get(page)?.has(mcid) ?? false)
  if (!structure) return
  for (const element of structure.all) withoutContent(element, decoration)
  cleanStructure(document, structure)
  tagWidgets(document, structure)
  writeStructure(document, structure)
}
