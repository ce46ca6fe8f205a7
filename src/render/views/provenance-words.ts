import type { Provenance } from '../../model/figure.ts'
import type { Pen } from './pen.ts'

/** Only the name of the file: a binder on a shelf has no folders. */
const fileName = (path: string): string => path.split('/').at(-1) ?? path

/** Where a value comes from, in words. */
export function provenanceWords(p: Provenance, pen: Pen): string {
  const word = pen.words.provenance[p.kind] ?? p.kind
  switch (p.kind) {
    case 'measured':
      return `${word} ${p.date}, ${p.by} (${fileName(p.at.file)}, line ${p.at.line})`
    case 'stated':
      return `${word} (${fileName(p.at.file)}, line ${p.at.line})`
    case 'typical':
      return p.note === '' ? word : `${word}: ${p.note}`
    case 'rule':
      return p.note === '' ? word : p.note
    case 'derived':
      return word
  }
}
