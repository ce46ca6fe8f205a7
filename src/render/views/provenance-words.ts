import type { Provenance } from '../../model/figure.ts'
import { fill } from '../../model/pattern.ts'
import type { Place } from '../../model/problem.ts'
import type { Pen } from './pen.ts'

/** The file by its name, and the line in it. */
const placeWords = ({ file, line }: Place, { words }: Pen): string =>
  fill(words.facility.line, { file: file.split('/').at(-1) ?? file, line })

/** Where a value comes from, in words. */
export function provenanceWords(p: Provenance, pen: Pen): string {
  const word = pen.words.provenance[p.kind]
  // Who holds paper has no file before him; and lines move with every entry above them, for which
  // pages on a shelf would have to be exchanged.
  const place = (at: Place): string => (pen.medium === 'paper' ? '' : ` (${placeWords(at, pen)})`)
  switch (p.kind) {
    case 'measured':
      return `${word} ${p.date}, ${p.by}${place(p.at)}`
    case 'stated':
    case 'rough':
      return `${word}${place(p.at)}`
    case 'typical':
    case 'rule':
    case 'choice':
      return p.note === '' ? word : `${word}: ${p.note}`
    case 'derived':
      return word
  }
}
