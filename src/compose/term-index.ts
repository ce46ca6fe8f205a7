import type { Manual, ManualProcedure } from '../model/manual.ts'

/** A term that stands in more procedures than this is met everywhere; a list of pages would help nobody. */
const everywhere = 14

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')

/** All that a procedure says, without the names of figures and the targets of links. */
const wordsOf = (p: ManualProcedure): string => {
  const { id: _, section: __, symptoms: ___, references: ____, ...said } = p
  return JSON.stringify(said).replace(/\{[a-z0-9.-]+\}/g, ' ').replace(/\(procedure:[a-z0-9-]+\)/g, ' ')
}

/** For each term of the glossary the procedures that use it, in the order of the binder. */
export function composeTermIndex(terms: Manual['terms'], procedures: readonly ManualProcedure[]): Manual['termIndex'] {
  const said = procedures.map((p) => ({ id: p.id, words: wordsOf(p) }))
  return terms.flatMap(({ term }) => {
    const pattern = new RegExp(`\\b${escaped(term)}(?:s|es)?\\b`, 'i')
    const found = said.filter((p) => pattern.test(p.words)).map((p) => p.id)
    return found.length === 0 ? [] : [{ term, throughout: found.length > everywhere, procedures: found.length > everywhere ? [] : found }]
  })
}
