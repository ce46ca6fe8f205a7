import type { FactPath } from '../../model/fact-spec.ts'
import type { Fact, Figure, Worksheet } from '../../model/figure.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import type { Locale } from '../../model/quantity/format-quantity.ts'
import type { WorksheetWords } from '../../model/worksheet-words.ts'
import { formulaLines } from '../formula/formula-lines.ts'
import type { FigureId, UseId } from '../uses/ids.ts'
import type { Use } from '../uses/use.ts'
import { createTrace } from './trace.ts'
import { createWording, type Wording } from './wording.ts'
import { type Given, type KindOfFact, startWorking, type Worked } from './working.ts'

/**
 * Answers for one facility: every figure is computed once, when it is first asked for. Names are
 * known to the compiler; a name from content passes `isFigureId`, `isFactPath` or `isQuantityId`
 * first.
 */
export type Engine<
  Id extends string = FigureId,
  Path extends string = FactPath,
  Name extends string = UseId,
> = {
  readonly uses: readonly Use<Name>[]
  readonly facts: ReadonlyMap<Path, Fact<Path>>
  /** Ids of all figures that there are here, in the order of the uses. */
  readonly figureIds: readonly Id[]
  readonly figure: (id: Id) => Figure | undefined
  /** The value of a figure or fact, SI; undefined where it has none here. */
  readonly si: (id: Id | Path) => number | undefined
  /** The value of a figure or fact as printed; undefined where it has none here. */
  readonly text: (id: Id | Path) => string | undefined
  /**
   * Values (SI) of several figures and facts under names of the caller's own; undefined as soon as
   * one of them has none here.
   */
  readonly siOfAll: <const Ids extends Readonly<Record<string, Id | Path>>>(
    ids: Ids,
  ) => { readonly [Key in keyof Ids]: number } | undefined
  readonly worksheet: (use: Name) => Worksheet | undefined
  /** All worksheets, in the order of the uses. */
  readonly worksheets: () => readonly Worksheet[]
  /** Paths of all facts that a figure rests on, directly or not. */
  readonly restsOn: (figure: Id) => ReadonlySet<Path>
  /** Ids of all figures that rest on a fact, in the order of the uses. */
  readonly figuresOn: (fact: Path) => readonly Id[]
  /**
   * The same facility with other values (SI) for some facts; what does not rest on them is not
   * computed again.
   */
  readonly vary: (values: ReadonlyMap<Path, number>) => Engine<Id, Path, Name>
}

const idsOf = ({ id, calculation }: Use<string>): readonly string[] =>
  Object.keys(calculation.outputs).map((output) => `${id}.${output}`)

/** Figures by the facts that they rest on. */
function byFact(
  figureIds: readonly string[],
  { ofFigure }: Given['trace'],
): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>()
  for (const id of figureIds)
    for (const path of ofFigure(id)) {
      const figures = found.get(path)
      if (figures) figures.push(id)
      else found.set(path, [id])
    }
  return found
}

/** What is made when somebody first asks. */
function lazily<T>(make: () => T): () => T {
  let made: T | undefined
  return () => {
    made ??= make()
    return made
  }
}

/** What is printed of it is put together when somebody looks: most who ask want no more than a title. */
function toWorksheet(
  use: Use<string>,
  worked: Worked,
  locale: Locale,
  wording: Wording,
): Worksheet {
  const { calculation } = use
  const outputs = lazily(() =>
    Object.keys(calculation.outputs).flatMap((output) => worked.figure(output) ?? []),
  )
  const formulas = lazily(() =>
    formulaLines(use, worked.inputs(), worked.values, locale, (id) =>
      wording.term(calculation, id),
    ),
  )
  return {
    number: wording.number(use),
    id: use.id,
    title: wording.title(use),
    calculation: calculation.id,
    about: wording.about(calculation),
    get inputs() {
      return worked.inputs()
    },
    get outputs() {
      return outputs()
    },
    get formulas() {
      return formulas()
    },
    sources: calculation.sources,
  }
}

/** What each name leads to, when all lead to something. */
function allKnown<Ids extends Readonly<Record<string, string>>>(
  ids: Ids,
  siOf: (id: string) => number | undefined,
): { readonly [Key in keyof Ids]: number } | undefined {
  const found = Object.entries(ids).map(([key, id]) => [key, siOf(id)] as const)
  return found.every(([, si]) => si !== undefined)
    ? (Object.fromEntries(found) as { readonly [Key in keyof Ids]: number })
    : undefined
}

/** A fact that the facility does not have, for a value that a reader supposes. */
function supposed(path: string, kindOf: KindOfFact): Fact<string> | undefined {
  const kind = kindOf(path)
  const provenance = { kind: 'choice', sources: [], note: '' } as const
  return kind && { path, label: path, kind, si: 0, text: '', provenance, howTo: '' }
}

/** Facts with other values (SI) for some; the rest as they are. */
function changed(
  { facts, locale, kindOf }: Given,
  values: ReadonlyMap<string, number>,
): ReadonlyMap<string, Fact<string>> {
  const all = new Map(facts)
  for (const [path, si] of values) {
    const fact = facts.get(path) ?? supposed(path, kindOf)
    if (fact)
      all.set(path, {
        ...fact,
        si,
        get text() {
          return formatExact(si, fact.kind, locale)
        },
      })
  }
  return all
}

function engineOf(
  given: Given,
  elsewhere: Parameters<typeof startWorking>[1],
): Engine<string, string, string> {
  const { uses, facts, locale, trace, wording, all, figureIds, figuresOn } = given
  const { work, resultOf, figureOf } = startWorking(given, elsewhere)
  const sheets = new Map<string, Worksheet>()
  const sheetOf = (use: Use<string>): Worksheet => {
    const sheet = sheets.get(use.id) ?? toWorksheet(use, work(use), locale, wording)
    sheets.set(use.id, sheet)
    return sheet
  }
  const siOf = (id: string): number | undefined => {
    const result = resultOf(id)
    if (result) return result.ok ? result.si : undefined
    return facts.get(id)?.si
  }
  const textOf = (id: string): string | undefined => {
    const value = figureOf(id)?.value
    if (value) return value.ok ? value.text : undefined
    return facts.get(id)?.text
  }
  return {
    uses: all,
    facts,
    figureIds,
    figure: figureOf,
    si: siOf,
    text: textOf,
    siOfAll: (ids) => allKnown(ids, siOf),
    worksheet: (id) => {
      const use = uses.get(id)
      return use && sheetOf(use)
    },
    worksheets: () => all.map(sheetOf),
    restsOn: trace.ofFigure,
    figuresOn: (fact) => figuresOn().get(fact) ?? [],
    vary: (values) => {
      const paths = [...values.keys()]
      const isTouched = (use: Use<string>): boolean => {
        const rests = trace.ofUse(use)
        return paths.some((path) => rests.has(path))
      }
      // What rests on none of them is worked out once for all that are varied from here.
      return engineOf({ ...given, facts: changed(given, values) }, (use) =>
        isTouched(use) ? undefined : work(use),
      )
    },
  }
}

/**
 * Makes the engine of a facility from its uses (what is computed from what) and its facts.
 * @param kindOf Tells the kind of facts that the facility does not have and a reader may suppose;
 *   without it only what the facility has can be varied.
 * @throws RangeError when two uses have one id.
 */
export function createEngine<
  Id extends string = FigureId,
  Path extends string = FactPath,
  Name extends string = UseId,
>(
  uses: readonly Use<Name>[],
  facts: ReadonlyMap<Path, Fact<Path>>,
  locale: Locale,
  words: WorksheetWords,
  kindOf: KindOfFact = () => undefined,
): Engine<Id, Path, Name> {
  const byId = new Map<string, Use<string>>()
  for (const use of uses) {
    if (byId.has(use.id)) throw new RangeError(`two uses are called ${use.id}`)
    byId.set(use.id, use)
  }
  const trace = createTrace(byId)
  const figureIds = [...byId.values()].flatMap(idsOf)
  let figuresOn: ReadonlyMap<string, readonly string[]> | undefined
  const given: Given = {
    uses: byId,
    facts,
    locale,
    trace,
    wording: createWording(words, locale),
    kindOf,
    all: [...byId.values()],
    figureIds,
    figuresOn: () => {
      figuresOn ??= byFact(figureIds, trace)
      return figuresOn
    },
  }
  // Inside, names are strings; only those that ask are held to the ones declared.
  return engineOf(given, () => undefined) as unknown as Engine<Id, Path, Name>
}
