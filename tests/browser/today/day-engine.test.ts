import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type DayEngine, dayEngine } from '../../../src/browser/today/day-engine.ts'
import { createEngine, type Engine } from '../../../src/compute/engine/engine.ts'
import { buildFacts } from '../../../src/compute/facts/build-facts.ts'
import { collectKnown } from '../../../src/compute/facts/collect.ts'
import { allUses } from '../../../src/compute/uses/all-uses.ts'
import { useIdOf } from '../../../src/compute/uses/use.ts'
import type { FactPath } from '../../../src/model/fact-spec.ts'
import type { Sums } from '../../../src/model/manual/today.ts'
import { demoManual, demos, loadDemo } from '../../support/demo.ts'

/** As it goes through a file of the site. */
const carried = (sums: Sums): Sums => JSON.parse(JSON.stringify(sums)) as Sums

type Values = ReadonlyMap<FactPath, number>

async function both(id: string) {
  const { manual } = await demoManual(id)
  const { computed, facility } = await loadDemo(id)
  if (!computed || !facility) throw new Error(`${id} has faults`)
  const { locale, capabilities, data, words, known: decides } = computed
  const known = collectKnown(facility, capabilities)
  const { material } = facility.file.cushion
  /** The program's own engine of the facility as if its file said these values (SI). */
  const altered = (values: Values): Engine => {
    const told = new Map([
      ...known,
      ...[...values].map(
        ([path, si]) =>
          [path, { si, provenance: { kind: 'rule', sources: [], note: '' } }] as const,
      ),
    ])
    const facts = buildFacts(told, capabilities, material, locale, words.facts)
    const all = new Set([...decides, ...facts.keys()])
    return createEngine(allUses(all, locale.system, data), facts, locale, words.worksheets)
  }
  const facts = manual.today.groups
    .flatMap((g) => g.facts)
    // What the facility has no value for changes what can be worked out at all; see below.
    .filter((f) => computed.engine.facts.has(f.path as FactPath))
  return { manual, altered, facts, page: dayEngine(carried(manual.today.sums)) }
}

type Both = Awaited<ReturnType<typeof both>>

/** Values that somebody may put in: whole steps of what is printed, some of them beyond any formula. */
const changes = ({ facts }: Both): fc.Arbitrary<Values> =>
  fc
    .subarray([...facts], { minLength: 1, maxLength: 5 })
    .chain((chosen) =>
      fc.tuple(
        ...chosen.map(({ path, kind, range: [low, high] }) =>
          (kind === 'count'
            ? fc.integer({ min: Math.ceil(low), max: Math.min(30, Math.floor(high)) })
            : fc.integer({ min: 0, max: 1000 }).map((n) => low + ((high - low) * n) / 1000)
          ).map((si): [FactPath, number] => [path as FactPath, si]),
        ),
      ),
    )
    .map((pairs) => new Map(pairs))

/** What all followers come to, with the reasons where there is no number. */
const saidBy = (engine: Pick<DayEngine, 'figure'>, names: readonly string[]) =>
  names.map((name) => ({ name, value: engine.figure(name)?.value }))

describe.each(demos)('in the page of %s', (id) => {
  it('every figure is that of the manual, to the last digit', async () => {
    const { manual, page } = await both(id)
    const { follows, sums } = manual.today
    const follow = new Set(follows)
    const without = new Set(sums.without)
    const figures = manual.figures.filter((f) => !without.has(useIdOf(f.id)))
    expect(figures.length).toBeGreaterThan(0.85 * manual.figures.length)
    expect(page.figureIds).toEqual(figures.map((f) => f.id))
    for (const { id: name, value, estimate, toMeasure } of figures) {
      // Pages know the reasons of what a day can change.
      const said = value.ok || follow.has(name) ? value : { ok: false }
      expect({ name, ...page.figure(name) }).toMatchObject({ value: said, estimate, toMeasure })
    }
  })

  it('what is put in gives what the program gives for a facility that says so, and back', async () => {
    const given = await both(id)
    const names = given.page.figureIds.filter((name) => given.manual.today.follows.includes(name))
    const printed = saidBy(given.page, names)
    fc.assert(
      fc.property(changes(given), (values) => {
        const day = given.page.vary(values)
        const program = given.altered(values) as unknown as DayEngine
        expect(saidBy(day, names)).toEqual(saidBy(program, names))
        const back = new Map(
          [...values.keys()].map((path) => [path, given.page.facts.get(path)?.si ?? Number.NaN]),
        )
        expect(saidBy(day.vary(back), names)).toEqual(printed)
      }),
      { numRuns: 25 },
    )
  })

  it('nothing changes that is not said to follow', async () => {
    const given = await both(id)
    const follow = new Set(given.manual.today.follows)
    const still = given.page.figureIds.filter((name) => !follow.has(name))
    const numbers = (engine: DayEngine) => still.map((name) => engine.si(name))
    const printed = numbers(given.page)
    fc.assert(
      fc.property(changes(given), (values) => {
        expect(numbers(given.page.vary(values))).toEqual(printed)
      }),
      { numRuns: 10 },
    )
  })
})
