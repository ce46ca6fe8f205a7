import { describe, expect, it } from 'vitest'
import earth from '../../../shared/sources/earth.json' with { type: 'json' }
import safety from '../../../shared/sources/safety.json' with { type: 'json' }
import { isRefusal } from '../../../src/compute/calculation.ts'
import { createEngine, type Engine } from '../../../src/compute/engine/engine.ts'
import { buildFacts } from '../../../src/compute/facts/build-facts.ts'
import type { KnownValue } from '../../../src/compute/facts/known.ts'
import { type FigureId, figureIdOf } from '../../../src/compute/uses/ids.ts'
import { ovalUses } from '../../../src/compute/uses/oval.ts'
import { safetyUses } from '../../../src/compute/uses/safety.ts'
import type { Use } from '../../../src/compute/uses/use.ts'
import { type Capability, capabilities } from '../../../src/model/capability.ts'
import { factSpec } from '../../../src/model/fact-spec.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import type { UnitSystem } from '../../../src/model/quantity/kinds.ts'
import { parseQuantity } from '../../../src/model/quantity/parse-quantity.ts'
import { libraryWords } from '../../support/worksheet-words.ts'
import { evaluateFormula } from '../support/evaluate-formula.ts'

/**
 * Worksheet numbers and figures that content relies on; neither is ever reused for anything else.
 */
const promised: readonly (readonly [number, string, string])[] = [
  [57, 'bank', 'water pull used moving'],
  [
    58,
    'newcomer',
    'first second third fourth fifth returning returning-second returning-third returning-fourth',
  ],
  [59, 'drinks', 'cups crew'],
  [80, 'noise', 'recommended rule recommended-dose dose'],
  [81, 'silica', 'action limit hourly'],
  [82, 'lift', 'limit index'],
  [83, 'line', 'distance'],
  [84, 'thunder', 'distance clear'],
  [85, 'letters', 'message signal poor'],
]

const siOf = (text: string): number => {
  const read = parseQuantity(text, { plain: true })
  if (!read.ok) throw new RangeError(read.fault.message)
  return read.quantity.si
}

const stated = (text: string): KnownValue => ({
  si: siOf(text),
  provenance: { kind: 'stated', at: { file: 'facility.yaml', line: 1, column: 1, length: 1 } },
})

function sample(
  system: UnitSystem,
  can: readonly Capability[] = capabilities,
  more: Readonly<Record<string, string>> = {},
): { engine: Engine; uses: readonly Use[] } {
  const locale = { system, currency: 'USD' }
  const known = new Map(
    Object.entries({ 'oval.lap': '2,640 ft', 'oval.straight': '600 ft', ...more }).map(
      ([path, text]) => [path, stated(text)],
    ),
  )
  const facts = buildFacts(known, new Set(can), 'stone-dust', locale, libraryWords.facts)
  const uses = safetyUses(new Set(facts.keys()))
  return {
    engine: createEngine(
      [...ovalUses(new Set(facts.keys()), system), ...uses],
      facts,
      locale,
      libraryWords.worksheets,
    ),
    uses,
  }
}

describe('safety uses', () => {
  const { engine, uses } = sample('us')

  it.each(promised)('has worksheet %d, %s: %s', (number, id, outputs) => {
    expect(uses.some((u) => u.id === id)).toBe(true)
    expect(libraryWords.worksheets.worksheets[id]?.number).toBe(number)
    for (const output of outputs.split(' '))
      expect(engine.si(figureIdOf(`${id}.${output}`)), `${id}.${output}`).toBeDefined()
    expect(uses.length).toBe(promised.length)
  })

  it('says nothing of a tank where there is none, and all else', () => {
    const bare = sample('metric', [])
    expect(bare.uses.map((u) => u.id)).toEqual(uses.map((u) => u.id).filter((id) => id !== 'bank'))
    expect(bare.engine.figure('line.distance')?.value).toMatchObject({ ok: true, text: '6.1 m' })
  })

  it('rounds what is allowed down, and what is needed up', () => {
    const text = (id: FigureId, more: Readonly<Record<string, string>> = {}): string =>
      sample('us', capabilities, more).engine.text(id) ?? ''
    expect(text('newcomer.first', { 'practice.shift': '8 h' })).toBe('1 h 35 min')
    expect(text('drinks.crew', { 'crew.race-day': '5', 'practice.shift': '8 h' })).toBe('10 gal')
    expect(text('noise.recommended', { 'practice.noise': '92 dB' })).toBe('1 h 35 min')
    expect(text('lift.limit')).toBe('19 lb')
    expect(text('line.distance', { 'practice.line-voltage': '13 kV' })).toBe('10 ft')
    expect(text('thunder.distance', { 'practice.flash-to-thunder': '12 s' })).toBe('2.4 mi')
  })

  it('works for every value that a facility may believably give', () => {
    for (const { id, calculation, bindings } of uses) {
      for (const [name, binding] of Object.entries(bindings)) {
        if (!('fact' in binding)) continue
        const [low = Number.NaN, high = Number.NaN] = (factSpec(binding.fact)?.range ?? []).map(
          siOf,
        )
        const range = calculation.inputs[name]?.range ?? [Number.NaN, Number.NaN]
        expect(range[0], `${id}.${name} from ${binding.fact}`).toBeLessThanOrEqual(low * (1 + 1e-9))
        expect(range[1], `${id}.${name} from ${binding.fact}`).toBeGreaterThanOrEqual(
          high * (1 - 1e-9),
        )
      }
    }
  })
})

describe.each(['us', 'metric'] as const)('safety worksheets, %s', (system) => {
  const { engine, uses } = sample(system)
  const known = new Set([...earth, ...safety].map((s) => s.id))

  it.each(uses.map((u) => [u.id, u] as const))(
    '%s: cites sources that exist',
    (_id, { calculation }) => {
      for (const id of calculation.sources) expect(known).toContain(id)
    },
  )

  // A table is looked up, not worked out.
  it.each(uses.filter((u) => u.id !== 'line').map((u) => [u.id, u] as const))(
    '%s: the printed formula gives the number that is given',
    (id, { calculation }) => {
      const inputs = Object.fromEntries(
        (engine.worksheet(id)?.inputs ?? []).map((i) => [i.name, i.si]),
      )
      const answers = calculation.compute(inputs)
      const names: Record<string, number> = {}
      for (const [name, spec] of Object.entries(calculation.inputs))
        names[name] = spec.formulaUnit
          ? toUnit(inputs[name] ?? Number.NaN, spec.formulaUnit)
          : (inputs[name] ?? Number.NaN)
      for (const [name, spec] of Object.entries(calculation.outputs)) {
        const answer = answers[name]
        if (answer === undefined || isRefusal(answer)) throw new Error(`${id}.${name} was refused`)
        expect(evaluateFormula(spec.tex, names) / answer, `${id}.${name}`).toBeCloseTo(1, 9)
        if (!(name in names)) names[name] = answer
      }
    },
  )
})
