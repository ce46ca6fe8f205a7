import type { Computed } from '../compute/compute-facility.ts'
import type { Engine } from '../compute/engine/engine.ts'
import { rankUnmeasured } from '../compute/sensitivity.ts'
import { useIdOf } from '../compute/uses/use.ts'
import { dayNumber } from '../model/day.ts'
import type { Figure, Worksheet } from '../model/figure.ts'
import { baseLanguage } from '../model/language.ts'
import type {
  Manual,
  ManualCard,
  ManualCaution,
  ManualProcedure,
  ManualReckoner,
} from '../model/manual.ts'
import type { Paper, SheetPaper } from '../model/papers.ts'
import { placeholder } from '../model/placeholders.ts'
import { foot, mile } from '../model/quantity/units.ts'
import type { Facility } from '../validate/check-facility.ts'
import type { Library } from '../validate/check-library.ts'
import { applies, type Circumstances } from './applies.ts'
import { composeCards } from './cards.ts'
import {
  composeDryingCurve,
  composeHeatTable,
  composePasses,
  composeRaceInterval,
} from './charts.ts'
import { composeEmergency } from './emergency.ts'
import { composeFindings } from './findings.ts'
import { composeForms } from './forms.ts'
import { composeGeometry } from './geometry.ts'
import { composeContacts, composeGlance, composeMachines, composeRaceDays } from './glance.ts'
import { composeMonths, composeWaterMonths } from './months.ts'
import { composePlans } from './plans/compose-plans.ts'
import { composeCountdown } from './plans/countdown.ts'
import { composeGrainCurve } from './plans/material-rows.ts'
import { numberOf } from './plans/plan-context.ts'
import { composeCushionMap, composeLevelSections } from './plans/survey-rows.ts'
import { composeProcedure } from './procedure.ts'
import { measureLabel, namedQuantity } from './quantities.ts'
import { composeReckoner } from './reckoner.ts'
import { referenceText, type SourceItem } from './sources.ts'
import { composeTermIndex } from './term-index.ts'

export type ComposeInput = {
  readonly facility: Facility
  readonly computed: Computed
  readonly library: Library
  readonly sources: readonly SourceItem[]
  /** Build date, `YYYY-MM-DD`, from outside: the same input gives the same manual. */
  readonly date: string
}

/** Half-mile and other usual lengths by name, within one percent; else the length itself. */
const usualOvals: readonly {
  readonly si: number
  readonly system: string
  readonly name: string
}[] = [
  { si: mile / 2, system: 'us', name: 'half-mile' },
  { si: (5 / 8) * mile, system: 'us', name: 'five-eighths-mile' },
  { si: (3 / 4) * mile, system: 'us', name: 'three-quarter-mile' },
  { si: mile, system: 'us', name: 'one-mile' },
  { si: 2 * mile, system: 'us', name: 'two-mile' },
]

/**
 * Posted sheets on the small and the large paper of the binder's own system, unless a facility asks
 * for others.
 */
const usualPapers: Readonly<Record<Paper, readonly SheetPaper[]>> = {
  letter: ['letter', 'tabloid'],
  a4: ['a4', 'a3'],
}

function ovalName(lap: number, system: string): string {
  const usual = usualOvals.find((o) => o.system === system && Math.abs(o.si - lap) < 0.01 * lap)
  if (usual) return usual.name
  return system === 'us'
    ? `${Math.round(lap / foot).toLocaleString('en-US')} ft`
    : `${Math.round(lap)} m`
}

/** All names that any text of the manual uses, found in its finished data. */
function namesUsed(data: unknown, into: Set<string>): Set<string> {
  if (typeof data === 'string') for (const m of data.matchAll(placeholder)) into.add(m[1] ?? '')
  else if (Array.isArray(data)) for (const item of data) namesUsed(item, into)
  else if (typeof data === 'object' && data !== null)
    for (const item of Object.values(data)) namesUsed(item, into)
  return into
}

const allFigures = (engine: Engine): Figure[] =>
  engine.figureIds.flatMap((id) => engine.figure(id) ?? [])

function composeSections(
  library: Library,
  procedures: readonly ManualProcedure[],
): Manual['sections'] {
  return library.sections
    .map(({ value }) => ({
      ...value,
      procedures: procedures.filter((p) => p.section === value.id).map((p) => p.id),
    }))
    .filter((s) => s.procedures.length > 0)
    .map((s, i) => ({ ...s, number: i + 1 }))
}

/** Cautions that can stand in this manual, by id. */
const cautionsHere = (library: Library, here: Circumstances): ReadonlyMap<string, ManualCaution> =>
  new Map(
    library.cautions
      .map((c) => c.value)
      .filter((c) => applies(c.when, here))
      .map(({ id, signal, hazard, avoid, sources }) => [
        id,
        { id, signal, hazard, avoid, sources },
      ]),
  )

function composeProcedures(
  input: ComposeInput,
  here: Circumstances,
  reckoners: readonly ManualReckoner[],
  possible: ReadonlyMap<string, ManualCaution>,
): ManualProcedure[] {
  const { library, facility, computed } = input
  const kept = library.procedures.map((p) => p.value).filter((p) => applies(p.when, here))
  const ids = new Set(kept.map((p) => p.id))
  const named = (name: string) =>
    namedQuantity(name, computed.engine, computed.locale, library.words.capabilities)
  const context = {
    here,
    facility: facility.file,
    caution: (id: string) => possible.get(id),
    reckoner: (id: string) => reckoners.find((r) => r.id === id),
    present: (id: string | undefined) => id !== undefined && ids.has(id),
    worksheetOf: (name: string) => named(name).worksheet?.number,
    known: (name: string) => named(name).ok,
  }
  const sections = library.sections
    .map((s) => s.value.id)
    .filter((id) => kept.some((p) => p.section === id))
  return sections.flatMap((section, i) =>
    kept
      .filter((p) => p.section === section)
      .sort((a, b) => a.order - b.order)
      .map((p, j) => composeProcedure(p, `${i + 1}.${j + 1}`, context)),
  )
}

function cautionsUsed(
  procedures: readonly ManualProcedure[],
  cards: readonly ManualCard[],
): ManualCaution[] {
  const ofProcedures = procedures.flatMap((p) => [
    ...p.cautions,
    ...p.sheet.cautions,
    ...p.methods.flatMap((m) => m.steps.flatMap((s) => s.cautions)),
  ])
  return [
    ...new Map(
      [...ofProcedures, ...cards.flatMap((c) => c.cautions)].map((c) => [c.id, c]),
    ).values(),
  ]
}

function sourcesCited(
  input: ComposeInput,
  procedures: readonly ManualProcedure[],
  cautions: readonly ManualCaution[],
  worksheets: readonly Worksheet[],
): Manual['sources'] {
  const cited = new Set([
    ...procedures.flatMap((p) => [...p.background.map((b) => b.source), ...p.references]),
    ...cautions.flatMap((c) => c.sources),
    ...worksheets.flatMap((w) => [
      ...w.sources,
      ...w.inputs.flatMap((i) => ('sources' in i.provenance ? i.provenance.sources : [])),
    ]),
  ])
  return input.sources
    .filter((s) => cited.has(s.id))
    .map((s) => ({
      id: s.id,
      text: referenceText(s),
      short: s.id === 'common-practice' ? 'common practice' : (s.number ?? s.title),
    }))
}

/** The unmeasured values that some figure hangs on. */
function composeToMeasure(
  engine: Engine,
  work: Readonly<Record<string, string>>,
): Manual['toMeasure'] {
  return rankUnmeasured(engine).flatMap(({ fact, figures, most }) =>
    most
      ? [
          {
            label: measureLabel(fact.path, work),
            text: fact.text,
            howTo: fact.howTo,
            figures,
            most: `${engine.worksheet(useIdOf(most.figure))?.title ?? ''}: ${engine.figure(most.figure)?.label ?? ''}`,
            percent: Math.round(most.share * 100),
          },
        ]
      : [],
  )
}

/**
 * Chooses what applies to this facility and puts its figures in place: one value that says all that
 * the pages say.
 */
export function composeManual(input: ComposeInput): Manual {
  const { facility, computed, library } = input
  const { file } = facility
  const { engine, locale } = computed
  const { words } = library
  const here: Circumstances = {
    surface: file.cushion.material,
    rail: file.oval.rail ?? 'pylons',
    units: file.units,
    capabilities: computed.capabilities,
    numberOf: (name) => numberOf(engine, name),
  }
  const reckoners = library.reckoners
    .map((r) => r.value)
    .filter((r) => applies(r.when, here))
    .flatMap((r) => composeReckoner(r, engine, locale) ?? [])
  const months = composeMonths(engine, file, words)
  const tables = months ? [...reckoners, months] : reckoners
  const possible = cautionsHere(library, here)
  const procedures = composeProcedures(input, here, tables, possible)
  const present = new Set(procedures.map((p) => p.id))
  const symptoms = library.symptoms
    .map((s) => s.value)
    .flatMap((s) => {
      const causes = s.causes.filter((c) => present.has(c.procedure) && applies(c.when, here))
      return causes.length === 0 ? [] : [{ ...s, causes }]
    })
  const symptomRows = symptoms.map((s) => [
    s.says,
    s.causes[0]?.check ?? '',
    [
      ...new Set(
        s.causes.map(
          (c) =>
            `[${procedures.find((p) => p.id === c.procedure)?.title ?? ''}](procedure:${c.procedure})`,
        ),
      ),
    ].join('; '),
  ])
  const planContext = {
    facility,
    computed,
    here,
    words,
    plans: library.plans.map((p) => p.value),
    symptomRows,
  }
  const terms = library.terms.map((t) => t.value).sort((a, b) => a.term.localeCompare(b.term, 'en'))
  const contacts = composeContacts(facility, words.roles)
  const cards = composeCards(
    library.cards.map((c) => c.value),
    {
      here,
      contacts,
      known: (name) => namedQuantity(name, engine, locale, words.capabilities).ok,
      caution: (id) => possible.get(id),
      reckoner: (id) => tables.find((r) => r.id === id),
    },
  )
  const cautions = cautionsUsed(procedures, cards)
  const worksheets = [...engine.worksheets()].sort(
    (a, b) => Number(a.number.slice(2)) - Number(b.number.slice(2)),
  )
  const geometry = composeGeometry(engine, file)
  const contactRoles = new Set((file.contacts ?? []).map((c) => c.role))
  const manual = {
    facility: {
      id: file.id,
      name: file.name,
      town: file.place.town,
      lang: file.language ?? baseLanguage,
      system: file.units,
      currency: locale.currency,
      paper: file.paper,
      binder: {
        sides: file.binder?.sides ?? 2,
        sections: file.binder?.sections ?? 'next',
        dividers: file.binder?.dividers ?? 'none',
      },
      sheetPapers: file.sheets?.papers ?? usualPapers[file.paper],
      material: file.cushion.material,
      revision: file.revision ?? '1',
      siteAddress: file['site-address']?.replace(/\/+$/, ''),
      ovalName: ovalName(geometry.lap, file.units),
    },
    date: input.date,
    geometry,
    glance: composeGlance(engine.facts, words.groups),
    machines: composeMachines(facility, locale),
    contacts,
    emergency: composeEmergency(facility, words.roles),
    raceDays: composeRaceDays(facility, locale),
    sections: composeSections(library, procedures),
    procedures,
    cautions,
    symptoms,
    chapters: library.chapters
      .map((c) => c.value)
      .sort((a, b) => a.order - b.order)
      .map(({ id, title, place, text }) => ({ id, title, place, text })),
    terms,
    termIndex: composeTermIndex(terms, procedures),
    reckoners: tables,
    plans: composePlans(planContext),
    forms: composeForms(
      library.forms.map((f) => f.value),
      planContext,
    ),
    cards,
    cushionMap: composeCushionMap(planContext),
    grainCurve: composeGrainCurve(planContext),
    charts: {
      waterMonths: composeWaterMonths(engine, file),
      heat: composeHeatTable(
        library.reckoners.find((r) => r.value.id === 'heat')?.value,
        engine,
        locale,
      ),
      interval: composeRaceInterval(engine),
      drying: composeDryingCurve(engine),
      countdown: composeCountdown(planContext),
      levels: composeLevelSections(planContext),
      passes: composePasses(engine),
    },
    findings: composeFindings(
      {
        engine,
        capabilities: computed.capabilities,
        contactRoles,
        emergency: new Set(Object.keys(file.emergency ?? {})),
        hasClimate: engine.facts.has('climate.tmax'),
        today: dayNumber(input.date),
      },
      library.findings.map((f) => f.value),
    ),
    worksheets,
    toMeasure: composeToMeasure(engine, words.capabilities),
    figures: allFigures(engine),
    sources: sourcesCited(input, procedures, cautions, worksheets),
  }
  const names = namesUsed(
    manual,
    new Set([
      ...manual.figures.map((f) => f.id),
      ...engine.facts.keys(),
      ...procedures.flatMap((p) => p.time.flatMap((t) => t.figure ?? [])),
    ]),
  )
  return {
    ...manual,
    quantities: Object.fromEntries(
      [...names]
        .sort()
        .map((name) => [name, namedQuantity(name, engine, locale, words.capabilities)]),
    ),
  }
}
