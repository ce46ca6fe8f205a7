import type {
  FieldBookPart as ComposedPart,
  FieldBookPage,
  ManualBooklet,
  ManualFieldBook,
  ReadFirst,
} from '../model/manual/field-book.ts'
import type { ManualProcedure } from '../model/manual/procedure.ts'
import type { FieldBookFile, FieldBookPart } from '../validate/schemas/field-book.ts'
import { applies } from './applies.ts'
import { type ComposeContext, isKnown, itemsOf } from './context.ts'
import { besideEachOther } from './schedules/beside.ts'

type Parts = ComposeContext['parts']

const byId = <T extends { readonly id: string }>(
  list: readonly T[],
  id: string | undefined,
): T | undefined => list.find((item) => item.id === id)

/** Those that are named, in the order in which they are named. */
const allById = <T extends { readonly id: string }>(
  list: readonly T[],
  ids: readonly string[] | undefined,
): readonly T[] => (ids ?? []).flatMap((id) => byId(list, id) ?? [])

function procedurePart(part: FieldBookPart, procedure: ManualProcedure | undefined) {
  if (!procedure) return []
  const here = procedure.methods.map((m) => m.id)
  const methods = part.methods?.filter((id) => here.includes(id)) ?? here
  // Ways of working that do not belong here leave nothing to show.
  return methods.length === 0
    ? []
    : [{ kind: 'procedure' as const, procedure, show: part.show ?? [], methods }]
}

/** A table by race day has the number of its group behind its own id. */
const isOf = (table: string, id: string): boolean =>
  id === table || (id.startsWith(`${table}-`) && /^\d+$/.test(id.slice(table.length + 1)))

function planPart(part: FieldBookPart, parts: Parts) {
  const plan = byId(parts.schedules, part.plan)
  if (!plan) return []
  const tables = part.tables?.flatMap((id) =>
    besideEachOther(plan.tables.filter((t) => isOf(id, t.id))),
  )
  const shown = tables === undefined ? plan : { ...plan, drawings: [], tables }
  return shown.tables.length === 0 ? [] : [{ kind: 'plan' as const, plan: shown }]
}

/** A part as this facility has it; nothing where it has nothing of the kind. */
function composePart(part: FieldBookPart, context: ComposeContext): readonly ComposedPart[] {
  const { parts, here } = context
  if (!applies(part.when, here)) return []
  const reckoner = byId(parts.reckoners, part.reckoner)
  const card = byId(parts.cards, part.card)
  const chapter = byId(parts.chapters, part.chapter)
  const figures = (part.figures ?? [])
    .filter((name) => isKnown(name, context))
    .map((name) => ({ name, label: undefined }))
  const cautions = allById(parts.cautions, part.cautions)
  const symptoms = allById(parts.symptoms, part.symptoms)
  const all: readonly ComposedPart[] = [
    ...(part.emergency ? [{ kind: 'emergency' as const }] : []),
    ...(part.say ? [{ kind: 'say' as const }] : []),
    ...procedurePart(part, byId(parts.procedures, part.procedure)),
    ...planPart(part, parts),
    ...(reckoner ? [{ kind: 'reckoner' as const, reckoner }] : []),
    ...(card ? [{ kind: 'figures' as const, figures: card.figures }] : []),
    ...(figures.length > 0 ? [{ kind: 'figures' as const, figures }] : []),
    ...(chapter ? [{ kind: 'chapter' as const, chapter }] : []),
    ...(part.drawing === undefined ? [] : [{ kind: 'drawing' as const, drawing: part.drawing }]),
    ...(cautions.length > 0 ? [{ kind: 'cautions' as const, cautions }] : []),
    ...(symptoms.length > 0 ? [{ kind: 'symptoms' as const, symptoms }] : []),
    ...(part.terms ? [{ kind: 'terms' as const, terms: parts.terms.filter((t) => t.pocket) }] : []),
    ...(part.findings && parts.findings.length > 0
      ? [{ kind: 'findings' as const, findings: parts.findings }]
      : []),
  ]
  return all
}

const composePages = (
  pages: FieldBookFile['pages'],
  context: ComposeContext,
): readonly FieldBookPage[] =>
  pages
    .filter((page) => applies(page.when, context.here))
    .map(({ id, title, spare, parts }) => ({
      id,
      title,
      spare: spare === true,
      parts: parts.flatMap((part) => composePart(part, context)),
    }))
    .filter((page) => page.parts.length > 0)

function readFirst(file: FieldBookFile, parts: Parts): readonly ReadFirst[] {
  const found = (kind: ReadFirst['kind'], item: { id: string; title: string } | undefined) =>
    item ? [{ kind, id: item.id, title: item.title }] : []
  return file['read-first'].flatMap((first) => [
    ...found('procedure', byId(parts.procedures, first.procedure)),
    ...found('chapter', byId(parts.chapters, first.chapter)),
    ...found('plan', byId(parts.schedules, first.plan)),
  ])
}

/** Cautions that stand on a page of their own. */
const commonOf = (pages: readonly FieldBookPage[]): readonly string[] =>
  pages.flatMap((page) =>
    page.parts.flatMap((part) => (part.kind === 'cautions' ? part.cautions.map((c) => c.id) : [])),
  )

/** The pages that a beginner carries, of what applies here. */
export function composeFieldBook(context: ComposeContext): ManualFieldBook {
  const files = itemsOf(context.library.fieldBook)
  const pages = files.flatMap((file) => composePages(file.pages, context))
  return {
    pages,
    common: commonOf(pages),
    readFirst: files.flatMap((file) => readFirst(file, context.parts)),
  }
}

/** The pages that every volunteer is handed. */
export function composeHandout(context: ComposeContext): ManualBooklet {
  const files = itemsOf(context.library.fieldBook)
  const pages = files.flatMap((file) => composePages(file.handout, context))
  return { pages, common: commonOf(pages) }
}
