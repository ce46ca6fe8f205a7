import { readStructure } from '../../../src/print/finish/structure/read-structure.ts'
import type { PdfDocument } from '../../../src/print/pdf/kinds.ts'
import { annotationFaults } from './annotations.ts'
import { contentFaults } from './content.ts'
import { destinationFaults } from './destinations.ts'
import { documentFaults } from './document.ts'
import { fontFaults } from './fonts.ts'
import { structureFaults } from './structure.ts'

/**
 * Reads a finished PDF by those rules of ISO 14289-1:2014 that a program can check.
 * @returns each broken rule with its place; nothing when none is broken.
 */
export function brokenRules(document: PdfDocument): string[] {
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
