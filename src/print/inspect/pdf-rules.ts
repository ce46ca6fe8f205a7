import type { PDFDocument } from '@cantoo/pdf-lib'
import { readStructure } from '../finish/structure/tree.ts'
import { annotationFaults, destinationFaults } from './pdf-rules-annotations.ts'
import { contentFaults } from './pdf-rules-content.ts'
import { documentFaults, fontFaults } from './pdf-rules-document.ts'
import { structureFaults } from './pdf-rules-structure.ts'

/**
 * Reads a finished PDF by those rules of ISO 14289-1:2014 that a program can check.
 * @returns each broken rule with its place; nothing when none is broken.
 */
export function brokenRules(document: PDFDocument): string[] {
  const structure = readStructure(document)
  const of = structure
    ? [
        ...contentFaults(document, structure),
        ...structureFaults(document, structure),
        ...annotationFaults(document, structure),
      ]
    : ['document: no structure tree']
  return [
    ...documentFaults(document),
    ...of,
    ...destinationFaults(document),
    ...fontFaults(document),
  ]
}
