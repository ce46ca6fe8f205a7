import type { Provenance } from '../../model/figure.ts'
import { fill } from '../../model/pattern.ts'
import type { Place } from '../../model/problem.ts'
import type { Pen } from './pen.ts'

/** Only the name of the file: a binder on a shelf has no folders. */
const fileName = (path: string): string => path.split('/').at(-1) ?? path

/**
 * Lines move with every entry above them, and pages on a shelf would have to be exchanged for
 * nothing else.
 */
const placeWords = ({ file, line }: Place, { medium, words }: Pen): string =>
  medium === 'paper' ? fileName(file) : fill(words.facility.line, { file: fileName(file), line })

/** Where a value comes from, in words. */
export function provenanceWords(p: Provenance, pen: Pen): string {
  const word = pen.words.provenance[p.kind]
  switch (p.kind) {
    case 'measured':
      return `${word} ${p.date}, ${p.by} (${placeWords(p.at, pen)})`
    case 'stated':
      return `${word} (${placeWords(p.at, pen)})`
    case 'typical':
    case 'rule':
    case 'choice':
      return p.note === '' ? word : `${word}: ${p.note}`
    case 'derived':
      return word
  }
}
