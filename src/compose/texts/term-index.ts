import type { TermPlaces } from '../../model/manual/glossary.ts'
import type { ManualProcedure } from '../../model/manual/procedure.ts'
import { partPlace, stepPlace } from '../../model/procedure-places.ts'
import type { ManualParts } from '../context.ts'

/**
 * A term that stands in more procedures than this is met everywhere; a list of pages would help
 * nobody.
 */
const everywhere = 14

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')

/** Names of figures and targets of links are not words. */
const words = (...said: readonly unknown[]): string =>
  JSON.stringify(said)
    .replace(/\{[a-z0-9.-]+\}/g, ' ')
    .replace(/\(procedure:[a-z0-9-]+\)/g, ' ')

const warned = (
  cautions: readonly { readonly hazard: string; readonly avoid: string }[],
): readonly string[] => cautions.flatMap((c) => [c.hazard, c.avoid])

/**
 * Places of one part of a procedure, in the order of the page, each with what is said there; the
 * first that uses a term stands for the part.
 */
type Part = readonly { readonly place: string; readonly words: string }[]

function partsOf(p: ManualProcedure): readonly Part[] {
  const part = (name: Parameters<typeof partPlace>[1], ...said: readonly unknown[]): Part => [
    { place: partPlace(p.id, name), words: words(...said) },
  ]
  const methods = p.methods.map(
    (m): Part =>
      m.steps.map((s, i) => ({
        place: stepPlace(p.id, m.id, s.number),
        words: words(i === 0 ? [m.title, m.choose] : [], s.do, s.note, warned(s.cautions)),
      })),
  )
  return [
    part(
      'head',
      p.title,
      p.purpose,
      p.triggers,
      p.who.roles,
      p.who.authority,
      p.time.map((t) => t.text),
      p.gear.map((g) => [g.machine, g.machine === undefined ? g.instead : g.why]),
      p.tools,
      p.materials.map((m) => m.name),
      warned(p.cautions),
      p.notes,
    ),
    part(
      'measure',
      p.measure.map((m) => [m.do, m.how]),
      p.branches.map((b) => [b.found, b.do]),
    ),
    ...methods,
    part('checks', p.checks),
    part(
      'failures',
      p.failures.map((f) => [f.see, f.do]),
    ),
    part('stop', p.stop),
    part('records', p.records),
    part(
      'why',
      p.background.map((b) => b.text),
    ),
  ]
}

/**
 * For each term of the glossary the procedures that use it and the places in them, in the order of
 * the binder.
 */
export function composeTermIndex({
  parts,
}: {
  readonly parts: Pick<ManualParts, 'terms' | 'procedures'>
}): readonly TermPlaces[] {
  const said = parts.procedures.map((p) => ({ id: p.id, parts: partsOf(p) }))
  return parts.terms.flatMap(({ term }) => {
    const pattern = new RegExp(`\\b${escaped(term)}(?:s|es)?\\b`, 'i')
    const found = said
      .map((p) => ({
        id: p.id,
        places: p.parts.flatMap((part) => part.find((at) => pattern.test(at.words))?.place ?? []),
      }))
      .filter((p) => p.places.length > 0)
    if (found.length === 0) return []
    const throughout = found.length > everywhere
    return [
      {
        term,
        throughout,
        procedures: throughout ? [] : found.map((p) => p.id),
        places: throughout ? [] : found.flatMap((p) => p.places),
      },
    ]
  })
}
