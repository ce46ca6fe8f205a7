import { describe, expect, it } from 'vitest'
import table from '../../shared/usual.json' with { type: 'json' }
import { factPaths, factSpec, gearSpec } from '../../src/model/fact-spec.ts'
import { parseQuantity } from '../../src/model/quantity/parse-quantity.ts'
import { usualOfFact, usualOfMachine } from '../../src/model/usual-range.ts'
import { readMeasured } from '../../src/validate/read-measured.ts'

const si = (text: string): number => {
  const parsed = parseQuantity(text, { plain: true })
  if (!parsed.ok) throw new Error(text)
  return parsed.quantity.si
}

const facts = Object.entries(table.facts)
const fields = [
  ...Object.entries(table.machines),
  ...Object.values(table['by work']).flatMap((work) => Object.entries(work)),
]

describe('what is usual', () => {
  it.each(facts)('of %s is something that can be true of it', (path, range) => {
    const read = range.map((text) => readMeasured(path, text))
    expect(read.filter((r) => 'params' in r)).toEqual([])
    expect(si(range[0] ?? '')).toBeLessThan(si(range[1] ?? ''))
  })

  it.each(fields)('of the %s of a machine is something that can be true of it', (field, range) => {
    const possible = gearSpec(field)?.range.map(si) ?? []
    const [low = Number.NaN, high = Number.NaN] = range.map(si)
    expect(low).toBeGreaterThanOrEqual((possible[0] ?? Number.NaN) * (1 - 1e-9))
    expect(high).toBeLessThanOrEqual((possible[1] ?? Number.NaN) * (1 + 1e-9))
    expect(low).toBeLessThan(high)
  })

  it('holds every usual value that stands in for what nobody says', () => {
    const outside = factPaths.flatMap((path) => {
      const [, work, field] = /^gear\.([^.]+)\.(.+)$/.exec(path) ?? []
      const range =
        field === undefined
          ? usualOfFact(path)
          : usualOfMachine(field, [work as Parameters<typeof usualOfMachine>[1][number]])[0]
      return (['stone-dust', 'clay', 'sand-clay'] as const).flatMap((material) => {
        const typical = factSpec(path)?.typical(material)
        if (!range || !typical) return []
        const [low, high] = range.map(si)
        return [typical.us, typical.metric]
          .filter((t) => si(t) < (low ?? 0) * 0.999 || si(t) > (high ?? 0) * 1.001)
          .map((t) => `${path}: ${t}`)
      })
    })
    expect(outside).toEqual([])
  })

  it('is, of a machine that does several works, what is usual of any of them', () => {
    expect(usualOfMachine('speed', ['grade', 'harrow'])).toHaveLength(2)
    expect(usualOfMachine('speed', ['haul'])).toEqual([table.machines.speed])
    expect(usualOfMachine('tire-gap', ['haul'])).toEqual([])
  })
})
