import { describe, expect, it } from 'vitest'
import sources from '../../shared/sources/earth.json' with { type: 'json' }
import { isRefusal } from '../../src/compute/calculation.ts'
import { factSpec } from '../../src/model/fact-spec.ts'
import { toUnit } from '../../src/model/quantity/format-quantity.ts'
import { parseQuantity } from '../../src/model/quantity/parse-quantity.ts'
import { libraryWords } from '../support/worksheet-words.ts'
import { evaluateFormula } from './support/evaluate-formula.ts'
import { everything, sampleEngine } from './support/sample-engine.ts'

/**
 * Worksheet numbers and figures that content relies on; neither is ever reused for anything else.
 */
const promised: readonly (readonly [number, string, string])[] = [
  [1, 'shape', 'lap straight radius'],
  [2, 'rail', 'length'],
  [3, 'outside', 'length'],
  [4, 'foot', 'extra'],
  [5, 'turn', 'length'],
  [6, 'area', 'straights turns total acres'],
  [7, 'stations', 'count'],
  [8, 'rise', 'straights turns'],
  [9, 'banking', 'balanced-speed side-force'],
  [10, 'cushion', 'volume mass'],
  [11, 'quarter', 'mass loads cost'],
  [12, 'survey', 'readings'],
  [103, 'pile', 'across'],
  [20, 'grade', 'laps distance time'],
  [21, 'grade-band', 'laps time'],
  [107, 'draw-in', 'laps time'],
  [22, 'harrow', 'laps distance time'],
  [23, 'screen', 'laps time'],
  [24, 'roll', 'laps each time move'],
  [25, 'drum', 'laps time'],
  [26, 'condition', 'laps time'],
  [27, 'spray', 'laps time'],
  [30, 'creep', 'volume mass depth left ridge'],
  [31, 'ridge', 'taken dam-width dam-volume lift-width'],
  [50, 'seal', 'time start-before'],
  [51, 'press', 'tire short long hardest softest least most'],
  [60, 'washout', 'volume loose mass lifts water barrows thin-share time'],
  [62, 'deep', 'excess volume mass windrow-height loads time'],
  [63, 'hard', 'missing mass loads cost cut'],
  [65, 'grit', 'add loads'],
  [101, 'harrow-power', 'pull drawbar need'],
  [102, 'haul', 'trip balance rate'],
  [66, 'drain', 'flow time'],
]

describe('earth-side uses', () => {
  const { engine, uses } = sampleEngine()

  it.each(promised)('has worksheet %d, %s: %s', (number, id, outputs) => {
    expect(uses.some((u) => u.id === id)).toBe(true)
    expect(libraryWords.worksheets.worksheets[id]?.number).toBe(number)
    for (const output of outputs.split(' ')) expect(engine.figureIds).toContain(`${id}.${output}`)
  })

  it('has no use twice', () => {
    expect(new Set(uses.map((u) => u.id)).size).toBe(uses.length)
    expect(uses.length).toBe(promised.length)
  })

  it('gives a number or a reason for every figure of every mix of machines and facts', () => {
    for (const system of ['us', 'metric'] as const) {
      for (const can of [
        [],
        ['harrow'],
        ['grade', 'load', 'haul'],
        ['roll-drum', 'screen'],
        ['roll-tires'],
      ] as const) {
        for (const known of [
          everything,
          { 'oval.straight': '600 ft', 'oval.radius': '226 ft' },
          { 'oval.lap': '1,000 m', 'oval.radius': '90 m' },
          {},
        ]) {
          const sample = sampleEngine(known, can, system)
          for (const use of sample.uses) {
            for (const figure of sample.engine.worksheet(use.id)?.outputs ?? []) {
              expect(figure.value.ok ? figure.value.text : figure.value.reason, figure.id).not.toBe(
                '',
              )
            }
          }
        }
      }
    }
  })

  it('works for every value that a facility may believably give', () => {
    for (const { id, calculation, bindings } of uses) {
      for (const [name, binding] of Object.entries(bindings)) {
        if (!('fact' in binding)) continue
        const bounds = (factSpec(binding.fact)?.range ?? [])
          .map((text) => parseQuantity(text, { plain: true }))
          .map((read) => (read.ok ? read.quantity.si : Number.NaN))
        const [low = Number.NaN, high = Number.NaN] = calculation.inputs[name]?.range ?? []
        expect(low, `${id}.${name} from ${binding.fact}`).toBeLessThanOrEqual(
          bounds[0] ?? Number.NaN,
        )
        expect(high, `${id}.${name} from ${binding.fact}`).toBeGreaterThanOrEqual(
          (bounds[1] ?? Number.NaN) * (1 - 1e-9),
        )
      }
    }
  })

  it('leaves out work whose machine is not there', () => {
    const { engine: bare } = sampleEngine(everything, ['harrow'])
    expect(
      (
        [
          'harrow.time',
          'grade.time',
          'screen.time',
          'roll.time',
          'seal.time',
          'press.least',
        ] as const
      ).map((id) => bare.figureIds.includes(id)),
    ).toEqual([true, false, false, false, false, false])
    expect(sampleEngine(everything, []).engine.figureIds).not.toContain('ridge.lift-width')
  })

  it('answers for depth only where it is known which way it is off', () => {
    expect(engine.figure('deep.excess')?.value.ok).toBe(true)
    expect(engine.figure('hard.missing')?.value).toMatchObject({
      ok: false,
      reason: 'no depth is missing',
    })
    const thin = sampleEngine({ ...everything, 'cushion.depth.found': '1/2 in' }).engine
    expect(thin.figure('deep.excess')?.value.ok).toBe(false)
    expect(thin.figure('hard.missing')?.value).toMatchObject({ ok: true, text: '1/2 in' })
  })

  it('reckons with one step of the harrow where no depth was measured, and with the usual ridge', () => {
    const { engine: unmeasured } = sampleEngine({
      'oval.lap': '2,640 ft',
      'oval.straight': '600 ft',
    })
    expect(unmeasured.figure('hard.missing')?.value).toMatchObject({ ok: true, text: '1/4 in' })
    expect(unmeasured.figure('quarter.cost')?.value).toMatchObject({ ok: false })
    expect(unmeasured.figure('quarter.loads')?.value.ok).toBe(true)
    expect(unmeasured.figure('ridge.dam-width')?.value).toMatchObject({ ok: true, text: '4.0 ft' })
  })

  it('lets the straight give way where all three dimensions are stated', () => {
    const all = sampleEngine({ ...everything, 'oval.radius': '226 ft' }).engine
    expect(all.figure('shape.straight')?.value).toMatchObject({ ok: true, text: '600.6 ft' })
  })

  it('rolls with the drum where there are no trucks, and seals by dragging alone where nothing rolls', () => {
    const drum = sampleEngine(everything, ['screen', 'roll-drum']).engine
    const sum = (drum.si('screen.time') ?? Number.NaN) + (drum.si('drum.time') ?? Number.NaN)
    expect(drum.figure('seal.time')?.value).toMatchObject({
      ok: true,
      si: expect.closeTo(sum, 6) as number,
    })
    const flat = sampleEngine(everything, ['screen']).engine
    expect(flat.figure('seal.time')?.value).toMatchObject({ ok: true, text: '40 min' })
  })
})

describe.each([
  ['a deep cushion', sampleEngine()],
  [
    'a thin cushion of unknown price',
    sampleEngine(
      {
        'oval.straight': '180 m',
        'oval.radius': '69 m',
        'cushion.depth.found': '15 mm',
        'cushion.grit.found': '15 %',
      },
      ['harrow', 'screen', 'roll-drum'],
      'metric',
    ),
  ],
])('worksheets of an oval with %s', (_name, { engine, uses }) => {
  const known = new Set(sources.map((s) => s.id))

  it.each(uses.map((u) => [u.id, u] as const))('%s: cites sources that exist', (_id, use) => {
    for (const id of use.calculation.sources) expect(known).toContain(id)
  })

  it.each(uses.map((u) => [u.id, u] as const))(
    '%s: the printed formula gives the number that is given',
    (id, use) => {
      const { calculation } = use
      const worksheet = engine.worksheet(id)
      const inputs = Object.fromEntries((worksheet?.inputs ?? []).map((i) => [i.name, i.si]))
      const answers = calculation.compute(inputs)
      // A name means the input; where there is none, the output worked out above it.
      const names: Record<string, number> = {}
      for (const [name, spec] of Object.entries(calculation.inputs)) {
        names[name] =
          spec.formulaUnit === undefined
            ? (inputs[name] ?? Number.NaN)
            : toUnit(inputs[name] ?? Number.NaN, spec.formulaUnit)
      }
      const used = new Set<string>()
      const earlier = new Set(Object.keys(calculation.inputs))
      for (const [name, spec] of Object.entries(calculation.outputs)) {
        const answer = answers[name]
        for (const [, word = ''] of spec.tex.matchAll(/@([a-zA-Z]\w*(?:-[a-z]\w*)*)/g)) {
          expect(earlier, `${id}.${name} uses @${word}`).toContain(word)
          used.add(word)
        }
        earlier.add(name)
        if (answer === undefined || isRefusal(answer)) continue
        // An empirical formula gives a bare number in the unit it says.
        const given = spec.formulaUnit === undefined ? answer : toUnit(answer, spec.formulaUnit)
        const worked = evaluateFormula(spec.tex, names)
        expect(
          given === 0 ? Math.abs(worked) : Math.abs(worked / given - 1),
          `${id}.${name}: ${worked} for ${given}`,
        ).toBeLessThan(1e-4)
        if (!(name in names)) names[name] = given
      }
      if (Object.values(answers).every((a) => !isRefusal(a))) {
        // A width that is only held against a limit does not stand in the formula.
        expect(
          Object.keys(calculation.inputs).filter(
            (name) => !used.has(name) && name !== 'widthStraights',
          ),
        ).toEqual([])
      }
    },
  )
})
