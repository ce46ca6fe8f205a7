import { describe, expect, it } from 'vitest'
import { parseDocument, visit } from 'yaml'
import { computeFacility } from '../../src/compute/compute-facility.ts'
import type { Engine } from '../../src/compute/engine/engine.ts'
import type { FigureId } from '../../src/compute/uses/ids.ts'
import { type FactPath, isFactPath } from '../../src/model/fact-spec.ts'
import { hasErrors } from '../../src/model/problem.ts'
import { readYaml } from '../../src/read/read-yaml.ts'
import { checkFacility } from '../../src/validate/check-facility.ts'
import { libraryWords } from '../support/worksheet-words.ts'
import { chanceFrom } from './chance.ts'
import { madeFair, textOfFair } from './fairs/made-fair.ts'

// Laws that hold for whatever facility there may be, over facilities that nobody has.

/** All numbers of a facility file; nothing where it is refused. */
function engineOf(text: string): Engine | undefined {
  const tree = readYaml({ path: 'facility.yaml', text }).value
  const checked = tree && checkFacility(tree)
  if (!checked?.value || hasErrors(checked.problems)) return undefined
  return computeFacility(checked.value, libraryWords).engine
}

const fairs = Array.from({ length: 40 }, (_, seed) => {
  const text = textOfFair(madeFair(chanceFrom(seed + 70_001)))
  return { seed: seed + 70_001, text, engine: engineOf(text) }
}).flatMap(({ engine, ...fair }) => (engine ? [{ ...fair, engine }] : []))

const isSame = (a: number | undefined, b: number | undefined): boolean =>
  a === b ||
  (a !== undefined &&
    b !== undefined &&
    Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b)))

/** Figures for which something holds that must not, with the fair. */
const figuresOf = (
  isWrong: (fair: (typeof fairs)[number], id: FigureId) => boolean,
): readonly string[] =>
  fairs.flatMap((fair) =>
    fair.engine.figureIds
      .filter((id) => isWrong(fair, id))
      .map((id) => `${fair.seed}: ${id} ${fair.engine.si(id)}`),
  )

/** Figures that another value of a fact makes larger, or smaller where that is asked. */
function moved(
  path: FactPath,
  other: (value: number) => number,
  { to, of }: { to: 'larger' | 'smaller'; of: RegExp },
): readonly string[] {
  const engines = new Map(
    fairs.flatMap(({ seed, engine }) => {
      const value = engine.si(path)
      return value === undefined ? [] : [[seed, engine.vary(new Map([[path, other(value)]]))]]
    }),
  )
  return figuresOf(({ seed, engine }, id) => {
    const [before, after] = [engine.si(id), engines.get(seed)?.si(id)]
    if (!of.test(id) || before === undefined || after === undefined) return false
    const slack = 1e-9 * Math.abs(before)
    return to === 'larger' ? after > before + slack : after < before - slack
  })
}

const factsOf = (engine: Engine): ReadonlyMap<FactPath, number> =>
  new Map(
    [...engine.facts.keys()].filter(isFactPath).flatMap((fact) => {
      const si = engine.si(fact)
      return si === undefined ? [] : [[fact, si] as const]
    }),
  )

/** How long work takes. Loads wait for the hose differently where trucks are counted as their mean. */
const times = /^(?!layer\.).*\.(?:time|alone)$/

describe('fairs that nobody has', () => {
  it('are nearly all taken', () => expect(fairs.length).toBeGreaterThan(35))

  it('have numbers, and no time, volume or price below nothing', () => {
    // In winter the ground loses more than it gets; the sun stands north of the equator.
    const below = /^(?:air\.net|air\.tilt|dry\.tilt)$/
    expect(
      figuresOf(({ engine }, id) => {
        const value = engine.si(id)
        return value !== undefined && !(Number.isFinite(value) && (value >= 0 || below.test(id)))
      }),
    ).toEqual([])
  })

  it('have the same numbers in the other units', () => {
    const own = /^(?:foot|letters|stations|quarter|pile)\./
    const others = new Map(
      fairs.map(({ seed, text, engine }) => {
        const isUs = /^units: us$/m.test(text)
        const other = engineOf(text.replace(/^units: \w+$/m, isUs ? 'units: metric' : 'units: us'))
        return [seed, other?.vary(factsOf(engine))]
      }),
    )
    expect(
      figuresOf(
        ({ seed, engine }, id) => !own.test(id) && !isSame(engine.si(id), others.get(seed)?.si(id)),
      ),
    ).toEqual([])
  })

  it('have the same numbers in whatever order entries, race days, months and measurements stand', () => {
    const others = new Map(
      fairs.map(({ seed, text }) => {
        const document = parseDocument(text)
        visit(document, { Map: (_, map) => void map.items.reverse() })
        for (const list of ['climate', 'race-days', 'measurements', 'contacts'])
          visit(document.get(list, true) as never, { Seq: (_, seq) => void seq.items.reverse() })
        return [seed, engineOf(String(document))]
      }),
    )
    expect(
      figuresOf(({ seed, engine }, id) => !isSame(engine.si(id), others.get(seed)?.si(id))),
    ).toEqual([])
  })

  it.each([
    ['crew.people', 'larger'],
    ['crew.race-day', 'larger'],
    ['gear.harrow.count', 'larger'],
    ['gear.screen.count', 'larger'],
    ['gear.roll-tires.count', 'larger'],
    ['gear.roll-drum.count', 'larger'],
    ['gear.haul.count', 'larger'],
    ['gear.spray.count', 'larger'],
    ['water.fill-points', 'larger'],
  ] as const)('take longer over nothing with one more of %s', (path, to) =>
    expect(moved(path, (n) => n + 1, { to, of: times })).toEqual([]),
  )

  it('take longer over nothing with a faster hose', () =>
    expect(moved('water.fill-flow', (q) => 1.3 * q, { to: 'larger', of: times })).toEqual([]))

  it('dry no sooner after more rain', () =>
    expect(
      moved('practice.rain', (rain) => 1.7 * rain, { to: 'smaller', of: /^rain[\w-]*\./ }),
    ).toEqual([]))

  it('have no less in a larger store', () =>
    expect(
      moved('water.storage', (store) => 1.5 * store, { to: 'smaller', of: /^store\./ }),
    ).toEqual([]))

  it.each(['prices.material', 'prices.water', 'prices.fuel', 'prices.labor'] as const)(
    'pay no less for anything with dearer %s',
    (path) =>
      expect(
        moved(path, (price) => 1.5 * price, {
          to: 'smaller',
          of: /^(?:race-day|season|hard|grit|deep)\.(?:day|fair|labor|machines|water|cost|total)$/,
        }),
      ).toEqual([]),
  )

  it('pay for a race day what its people, machines and water cost', () =>
    expect(
      fairs.flatMap(({ seed, engine }) => {
        const day = engine.si('race-day.day')
        const parts = (['race-day.labor', 'race-day.machines', 'race-day.day-water'] as const).map(
          (id) => engine.si(id) ?? 0,
        )
        const sum = parts.reduce((a, b) => a + b, 0)
        return day === undefined || Math.abs(day - sum) < 1e-6 * day
          ? []
          : [`${seed}: ${day} ${sum}`]
      }),
    ).toEqual([]))
})
