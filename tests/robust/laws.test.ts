import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { isScalar, parseDocument, visit } from 'yaml'
import { computeFacility } from '../../src/compute/compute-facility.ts'
import type { FactPath } from '../../src/model/fact-spec.ts'
import { hasErrors } from '../../src/model/problem.ts'
import { readYaml } from '../../src/read/read-yaml.ts'
import { checkFacility } from '../../src/validate/check-facility.ts'
import { demoFolder, demos } from '../support/demo.ts'
import { libraryWords } from '../support/worksheet-words.ts'

const textOf = (demo: string): string =>
  readFileSync(path.join(demoFolder(demo), 'facility.yaml'), 'utf8')

/** All numbers of a facility file; nothing where the file has faults. */
function engineOf(text: string) {
  const tree = readYaml({ path: 'facility.yaml', text }).value
  const checked = tree && checkFacility(tree)
  if (!checked?.value || hasErrors(checked.problems)) return undefined
  return computeFacility(checked.value, libraryWords).engine
}

function engineOfDemo(text: string) {
  const engine = engineOf(text)
  if (!engine) throw new Error('the facility has faults')
  return engine
}

type Numbers = ReturnType<typeof engineOfDemo>

const isSame = (a: number | undefined, b: number | undefined): boolean =>
  a === b ||
  (a !== undefined &&
    b !== undefined &&
    Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b)))

/** Figures that have other values in two places, or a value in only one. */
const differing = (a: Numbers, b: Numbers): readonly string[] =>
  [...new Set([...a.figureIds, ...b.figureIds])].filter((id) => !isSame(a.si(id), b.si(id)))

const factsOf = (engine: Numbers): ReadonlyMap<FactPath, number> =>
  new Map(
    [...engine.facts.keys()].flatMap((fact) => {
      const si = engine.si(fact)
      return si === undefined ? [] : [[fact, si] as const]
    }),
  )

/** A facility file with one text in the place of another, which must be there. */
function changed(text: string, from: string | RegExp, to: string): string {
  const other = text.replace(from, to)
  if (other === text) throw new Error(`nothing to exchange: ${from}`)
  return other
}

/** Durations, lengths driven and the like: what more hands or machines may make less and never more. */
const work = (engine: Numbers): readonly string[] =>
  engine.figureIds.filter((id) => /\.(?:time|each)$/.test(id))

describe.each(demos)('the whole of %s', (demo) => {
  const text = textOf(demo)
  const engine = engineOfDemo(text)

  it('says the same in the other units, from the same facts', () => {
    const isUs = /^units: us$/m.test(text)
    const other = engineOfDemo(
      changed(text, /^units: \w+$/m, isUs ? 'units: metric' : 'units: us'),
    ).vary(factsOf(engine))
    // Each rests on a unit itself: what a foot or a meter more adds, letters for so many feet or
    // meters of distance, stations that lie a round number of feet or meters apart, the example of a
    // quarter inch or five millimeters more.
    const own = /^(?:foot|letters|stations|quarter|pile)\./
    expect(differing(engine, other).filter((id) => !own.test(id))).toEqual([])
  })

  it('says the same in whatever order its entries stand', () => {
    const document = parseDocument(text)
    visit(document, { Map: (_, map) => void map.items.reverse() })
    for (const list of ['climate', 'race-days', 'measurements', 'contacts', 'surveys'])
      visit(document.get(list, true) as never, { Seq: (_, seq) => void seq.items.reverse() })
    expect(differing(engine, engineOfDemo(String(document)))).toEqual([])
  })

  it('changes in a figure only where a fact has changed that the figure names', () => {
    const before = factsOf(engine)
    let tried = 0
    visit(parseDocument(text), {
      Scalar(key, node) {
        if (key === 'key' || !isScalar(node) || !node.range) return
        const written = text.slice(node.range[0], node.range[1])
        // Readings stay in the calculation that is made for them.
        const line = text.slice(text.lastIndexOf('\n', node.range[0]), node.range[0])
        if (/passing:|laboratory/.test(line)) return
        if (!/^"?\$?\d[\d.,]* [^\d]/.test(written)) return
        const more = written.replace(/\d[\d.,]*/, (n) =>
          String(Number(n.replaceAll(',', '')) * 1.02),
        )
        const other = engineOf(text.slice(0, node.range[0]) + more + text.slice(node.range[1]))
        if (!other) return
        tried++
        const after = factsOf(other)
        const moved = new Set(
          [...new Set([...before.keys(), ...after.keys()])].filter(
            (fact) => !isSame(before.get(fact), after.get(fact)),
          ),
        )
        const unnamed = differing(engine, other).filter((id) => {
          const rests = other.restsOn(id as never)
          return ![...rests].some((fact) => moved.has(fact))
        })
        expect(unnamed, `${written} → ${more}`).toEqual([])
      },
    })
    expect(tried).toBeGreaterThan(demo === 'brambleford' ? 3 : 30)
  })
})

/** A facility file with one machine more of a kind, by its place in the list; nothing where it may not be. */
function withOneMore(text: string, i: number) {
  const document = parseDocument(text)
  const count = ['equipment', i, 'count']
  document.setIn(count, Number(document.getIn(count) ?? 1) + 1)
  return engineOf(String(document))
}

// Brambleford says too little for hours after rain.
describe.each(demos.filter((demo) => demo !== 'brambleford'))('%s after more rain', (demo) => {
  it('is workable no sooner', () => {
    const engine = engineOfDemo(textOf(demo))
    const rains = ['0.2 in', '0.4 in', '0.8 in', '1.2 in', '2 in']
    const heel = ['rain.heel-quick', 'rain.heel-slow', 'rain.wanted-quick', 'rain.wanted-slow']
    const hours = rains.map((rain) => {
      const inch = Number.parseFloat(rain) * 0.0254
      const after = engine.vary(new Map([['practice.rain', inch]]))
      return heel.map((id) => after.si(id as never) ?? 0)
    })
    for (const [i, now] of hours.entries())
      for (const [k, hour] of now.entries())
        expect(hour, `${heel[k]} after ${rains[i]}`).toBeGreaterThanOrEqual(hours[i - 1]?.[k] ?? 0)
    expect(hours.at(-1)).not.toEqual(hours[0])
  })
})

describe.each(demos)('one machine more in %s', (demo) => {
  const text = textOf(demo)
  const engine = engineOfDemo(text)
  const machines = parseDocument(text).toJS().equipment as readonly { readonly id: string }[]

  it.each(machines.map(({ id }, i) => [id, i] as const))(
    '%s: takes longer over nothing',
    (_, i) => {
      const more = withOneMore(text, i)
      if (!more) return
      // A second harrow leaves time to water in the evening too: the day of the crew is longer, no work is.
      const longer = work(engine).filter((id) => {
        if (id === 'crew-day.each') return false
        const [before, after] = [engine.si(id as never), more.si(id as never)]
        return before !== undefined && after !== undefined && after > before * (1 + 1e-9)
      })
      expect(longer).toEqual([])
    },
  )
})

describe('larkmoor', () => {
  const text = textOf('larkmoor')
  const engine = engineOfDemo(text)
  const si = (of: Numbers, id: string): number => {
    const value = of.si(id as never)
    if (value === undefined) throw new Error(`no ${id}`)
    return value
  }

  it('half as large again has half as much again of everything that follows its length', () => {
    const larger = engineOfDemo(
      changed(
        changed(text, 'lap: 2,640 ft', 'lap: 3,960 ft'),
        'straight: 600 ft',
        'straight: 900 ft',
      ),
    )
    // The measuring line lies a few feet from the rail, whatever the lap.
    expect(si(larger, 'shape.lap') / si(engine, 'shape.lap')).toBeCloseTo(1.5, 1)
    for (const id of [
      'area.straights',
      'area.total',
      'area.acres',
      'harrow.time',
      'screen.time',
      'spray.time',
    ])
      expect(si(larger, id) / si(engine, id), id).toSatisfy((r: number) => r > 1.45 && r < 1.55)
    for (const id of ['harrow.laps', 'screen.laps', 'spray.laps'])
      expect(si(larger, id), id).toBe(si(engine, id))
  })

  it.each([
    ['a truck', '    count: 2\n', '    count: 3\n'],
    ['a person', 'people: 3', 'people: 4'],
    ['a person on race days', 'race-day: 6', 'race-day: 7'],
  ])('with %s more takes longer over nothing', (_, from, to) => {
    const more = engineOfDemo(changed(text, from, to))
    const longer = work(engine).filter((id) => {
      const [before, after] = [engine.si(id as never), more.si(id as never)]
      return before !== undefined && after !== undefined && after > before * (1 + 1e-9)
    })
    expect(longer).toEqual([])
  })
})
