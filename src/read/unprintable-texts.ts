import { type Document, visit } from 'yaml'
import type { Problem } from '../model/problem.ts'
import type { SourceFile } from './source-file.ts'
import { unprintableIn, unprintableProblem } from './unprintable.ts'

/**
 * Every text and name of a YAML file that holds one. Apart from the reading of tables, which phones
 * carry without a parser of YAML.
 */
export function unprintableTexts(file: SourceFile, doc: Document): Problem[] {
  const found: Problem[] = []
  visit(doc, {
    Scalar(_, { value, range }) {
      const one = typeof value === 'string' ? unprintableIn(value) : undefined
      const [from, to] = range ?? [0, 1]
      if (one) found.push(unprintableProblem(file, from, to - from, one.name))
    },
  })
  return found
}
