import { type IndexKind, indexPages, indexPlace, indexTarget } from '../../model/index-places.ts'
import type { TermPlaces } from '../../model/manual/glossary.ts'
import type { ManualProcedure } from '../../model/manual/procedure.ts'
import { partPlace, stepPlace } from '../../model/procedure-places.ts'
import type { IndexEntry } from '../../validate/schemas/index-terms.ts'
import { type ComposeContext, itemsOf } from '../context.ts'

/**
 * Procedures that are named beside the main places: those that say most of a term. A longer list
 * would help nobody.
 */
const others = 4

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

/** A procedure with what is said in its parts. */
type Said = { readonly id: string; readonly parts: readonly Part[] }

/** In which parts of a procedure one of the words stands: the first place of each. */
const foundIn = ({ parts }: Said, pattern: RegExp): readonly string[] =>
  parts.flatMap((part) => part.find((at) => pattern.test(at.words))?.place ?? [])

/** The procedures that say most of a term, each by the first of its places, in their order. */
function otherPlaces(said: readonly Said[], entry: IndexEntry): readonly string[] {
  const any = (entry.words ?? [entry.term]).map(escaped).join('|')
  const pattern = new RegExp(`\\b(?:${any})(?:s|es)?\\b`, 'i')
  const found = said
    .filter((p) => !entry.main.includes(`procedure:${p.id}`))
    .map((p) => foundIn(p, pattern))
    .filter((places) => places.length > 0)
  const most = found.toSorted((a, b) => b.length - a.length).slice(0, others)
  return found.filter((places) => most.includes(places)).flatMap(([first]) => first ?? [])
}

/**
 * The index: for each term its main places, as far as this manual has them, and the procedures that
 * say most of it. What is found nowhere here is left out.
 * @param ids What this manual has of each kind.
 */
export function termIndexOf(
  entries: readonly IndexEntry[],
  procedures: readonly ManualProcedure[],
  ids: Readonly<Record<IndexKind, readonly string[]>>,
): readonly TermPlaces[] {
  const said = procedures.map((p) => ({ id: p.id, parts: partsOf(p) }))
  return entries
    .toSorted((a, b) => a.term.localeCompare(b.term, 'en'))
    .flatMap((entry) => {
      const main = entry.main
        .filter((written) => {
          const { kind, id } = indexTarget(written)
          return ids[kind].includes(id)
        })
        .map((written) => ({ place: indexPlace(written), main: true }))
      const rest = otherPlaces(said, entry).map((place) => ({ place, main: false }))
      const places = [...main, ...rest]
      return places.length === 0 ? [] : [{ term: entry.term, places }]
    })
}

const idsOf = (list: readonly { readonly id: string }[]): readonly string[] =>
  list.map((item) => item.id)

export const composeTermIndex = ({ library, parts }: ComposeContext): readonly TermPlaces[] =>
  termIndexOf(itemsOf(library.indexTerms), parts.procedures, {
    procedure: idsOf(parts.procedures),
    hazard: idsOf(parts.cautions),
    symptom: idsOf(parts.symptoms),
    plan: idsOf(parts.schedules),
    reckoner: idsOf(parts.reckoners),
    chapter: idsOf(parts.chapters),
    page: indexPages,
  })
