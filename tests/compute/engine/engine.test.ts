import { describe, expect, it } from 'vitest'
import { type Calculation, calculation, refuse } from '../../../src/compute/calculation.ts'
import { createEngine } from '../../../src/compute/engine/engine.ts'
import type { Binding, Use } from '../../../src/compute/uses/use.ts'
import type { Fact } from '../../../src/model/figure.ts'
import type { KindName } from '../../../src/model/quantity/kinds.ts'
import type { WorksheetWords } from '../../../src/model/worksheet-words.ts'

let runs = 0

const area = calculation({
  id: 'area',
  sources: ['geometry'],
  inputs: {
    a: { symbol: 'a', kind: 'distance', range: [0, 100] },
    b: { symbol: 'b', kind: 'distance', range: [0, 100] },
  },
  outputs: {
    total: { symbol: 'A', kind: 'area', tex: '@a\\,@b' },
    twice: { symbol: 'L', kind: 'distance', tex: '2\\,@a' },
  },
  compute: (x) => {
    runs++
    return { total: x.a * x.b, twice: 2 * x.a }
  },
})

const layer = calculation({
  id: 'layer',
  sources: ['geometry'],
  inputs: {
    area: { symbol: 'A', kind: 'area', range: [0, 1e6] },
    depth: { symbol: 'd', kind: 'depth', range: [0, 1] },
  },
  outputs: {
    volume: { symbol: 'V', kind: 'fillVolume', tex: '@area\\,@depth' },
    half: { symbol: 'H', kind: 'fillVolume', tex: '\\frac{@volume}{2}' },
  },
  refusals: ['too-thick'],
  compute: (x) =>
    x.depth > 0.5
      ? { volume: refuse('too-thick'), half: refuse('too-thick') }
      : { volume: x.area * x.depth, half: (x.area * x.depth) / 2 },
})

const place = { file: 'f.yaml', line: 1, column: 1, length: 1 }
const known = (
  path: string,
  si: number,
  kind: KindName,
  typical = false,
): [string, Fact<string>] => [
  path,
  {
    path,
    label: path,
    kind,
    si,
    text: '',
    howTo: '',
    provenance: typical
      ? { kind: 'typical', sources: [], note: '' }
      : { kind: 'stated', at: place },
  },
]

/** A use that the manual does not have, of calculations that it does not have. */
const use = (
  id: string,
  calculation: Calculation,
  bindings: Readonly<Record<string, Binding>>,
): Use<string> => ({ id, calculation, bindings })

const words: WorksheetWords = {
  worksheets: { ground: { number: 1 }, cover: { number: 2 }, inch: { number: 3 } },
  calculations: {
    area: {
      title: 'Area',
      about: 'How large it is.',
      inputs: { a: 'length', b: 'width' },
      outputs: { total: 'area', twice: 'twice the length' },
    },
    layer: {
      title: 'Layer',
      about: 'How much lies on it.',
      inputs: { area: 'area', depth: 'depth' },
      outputs: { volume: 'volume', half: 'half of it' },
      refusals: { 'too-thick': 'too thick' },
    },
  },
  reasons: { 'one-inch': { us: 'an inch', metric: '25.4 mm' } },
  noNumber: {
    unknown: '{input} is not known',
    outside: '{input} is {value}; the formula holds from {low} to {high}',
    any: 'any',
  },
}

const ground = { figure: 'ground.total' }

const uses = [
  use('ground', area, { a: { fact: 'x.a' }, b: { fact: 'x.b' } }),
  use('cover', layer, { area: ground, depth: { fact: 'x.d' } }),
  use('inch', layer, { area: ground, depth: { fixed: 0.0254, why: 'one-inch' } }),
]

const engineOf = (d = 0.1, typicalB = false) =>
  createEngine<string, string, string>(
    uses,
    new Map([
      known('x.a', 40, 'distance'),
      known('x.b', 20, 'distance', typicalB),
      known('x.d', d, 'depth'),
    ]),
    { system: 'metric', currency: 'EUR' },
    words,
  )

const si = (e: ReturnType<typeof engineOf>, id: string): number | string | undefined => {
  const v = e.figure(id)?.value
  return v && (v.ok ? v.si : v.reason)
}

describe('engine', () => {
  it('computes through other figures', () => {
    expect(si(engineOf(), 'cover.volume')).toBeCloseTo(80, 12)
  })

  it('computes each figure once', () => {
    runs = 0
    const e = engineOf()
    for (const id of ['cover.volume', 'cover.half', 'inch.volume', 'ground.total', 'cover.volume'])
      e.figure(id)
    expect(runs).toBe(1)
  })

  it('passes a refusal on to whatever rests on it', () => {
    expect(si(engineOf(0.6), 'cover.half')).toBe('too thick')
  })

  it('gives a reason instead of a number outside the declared range', () => {
    expect(si(engineOf(2), 'cover.volume')).toContain('the formula holds from 0 mm to')
  })

  it('gives the value of a figure or a fact, in SI and as printed', () => {
    const e = engineOf()
    expect(e.si('cover.volume')).toBeCloseTo(80, 12)
    expect(e.si('x.a')).toBe(40)
    expect(e.text('cover.volume')).toBe('80 m³')
    expect(engineOf(0.6).si('cover.volume')).toBeUndefined()
    expect(engineOf(0.6).text('cover.volume')).toBeUndefined()
    expect(e.si('x.nothing')).toBeUndefined()
    expect(e.siOfAll({ long: 'x.a', ground: 'ground.total' })).toEqual({ long: 40, ground: 800 })
    expect(engineOf(0.6).siOfAll({ long: 'x.a', volume: 'cover.volume' })).toBeUndefined()
  })

  it('says what is missing', () => {
    const e = createEngine<string, string, string>(
      uses,
      new Map([known('x.a', 40, 'distance')]),
      { system: 'metric', currency: 'EUR' },
      words,
    )
    expect(si(e, 'cover.volume')).toBe('width is not known')
    expect(e.figure('cover.nothing')).toBeUndefined()
    expect(e.figureIds).toContain('cover.volume')
    expect(e.figureIds).not.toContain('cover.nothing')
  })

  it('calls a figure an estimate when anything below it is typical', () => {
    const e = engineOf(0.1, true)
    expect(e.figure('cover.volume')).toMatchObject({ estimate: true, toMeasure: ['x.b'] })
    expect(engineOf().figure('cover.volume')).toMatchObject({ estimate: false, toMeasure: [] })
  })

  it('does not call it one for the sake of an input that it never meets', () => {
    const e = engineOf(0.1, true)
    expect(e.figure('ground.total')).toMatchObject({ estimate: true, toMeasure: ['x.b'] })
    expect(e.figure('ground.twice')).toMatchObject({ estimate: false, toMeasure: [] })
    expect([...e.restsOn('ground.twice')]).toEqual(['x.a'])
  })

  it('varies a fact without touching the original, and computes again only what rests on it', () => {
    const e = engineOf()
    e.figure('cover.volume')
    runs = 0
    const other = e.vary(new Map([['x.d', 0.2]]))
    expect(si(other, 'cover.volume')).toBeCloseTo(160, 12)
    expect(si(e, 'cover.volume')).toBeCloseTo(80, 12)
    expect(runs).toBe(0)
    expect([...e.restsOn('cover.volume')].sort()).toEqual(['x.a', 'x.b', 'x.d'])
  })

  it('shows the formula in symbols and with numbers and units', () => {
    const sheet = engineOf().worksheet('cover')
    expect(sheet?.formulas[0]?.tex).toBe('V = {A}\\,{d}')
    expect(sheet?.formulas[0]?.numbers).toContain('800')
    expect(sheet?.formulas[1]?.numbers).toContain('40')
  })

  it('speaks the words of its system of units', () => {
    const sheet = engineOf().worksheet('inch')
    expect(sheet).toMatchObject({ number: 'W-3', title: 'Layer', about: 'How much lies on it.' })
    expect(sheet?.inputs[1]?.provenance).toMatchObject({ kind: 'choice', note: '25.4 mm' })
  })

  it('reports uses that run in a circle', () => {
    const circle = [
      use('p', layer, { area: { figure: 'q.volume' }, depth: { fixed: 0.1, why: '' } }),
      use('q', layer, { area: { figure: 'p.volume' }, depth: { fixed: 0.1, why: '' } }),
    ]
    expect(() =>
      createEngine<string, string, string>(
        circle,
        new Map(),
        { system: 'us', currency: 'USD' },
        words,
      ).figure('p.volume'),
    ).toThrow(/depend on themselves/)
  })
})
