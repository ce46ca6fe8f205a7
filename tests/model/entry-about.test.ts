import { describe, expect, it } from 'vitest'
import table from '../../shared/facts.json' with { type: 'json' }
import { entryAbout } from '../../src/model/entry-about.ts'
import { factSpec } from '../../src/model/fact-spec.ts'
import { kindOf } from '../../src/model/quantity/kinds.ts'
import { parseQuantity } from '../../src/model/quantity/parse-quantity.ts'

const facts = [
  ...Object.keys(table.facts),
  ...Object.keys(table.gear).map((field) => `gear.harrow.${field}`),
].flatMap((path) => factSpec(path) ?? [])

const quantity = (text: string) => {
  const read = parseQuantity(text, { plain: true })
  if (!read.ok) throw new Error(text)
  return read.quantity
}

describe.each(['us', 'metric'] as const)('examples in %s units', (system) => {
  const shown = facts.flatMap((fact) => {
    const example = fact.example?.[system] ?? fact.typical('stone-dust')?.[system]
    return example === undefined ? [] : [{ fact, example }]
  })

  it('are there for nearly every quantity', () => expect(shown.length).toBeGreaterThan(200))

  it('are of their kind and can be true', () => {
    for (const { fact, example } of shown) {
      const { si, dims } = quantity(example)
      const [low, high] = fact.range.map((end) => quantity(end).si)
      if (dims.some((power) => power !== 0)) expect(dims, fact.path).toEqual(kindOf(fact.kind).dims)
      expect(si, fact.path).toBeGreaterThanOrEqual(low ?? Number.NaN)
      expect(si, fact.path).toBeLessThanOrEqual(high ?? Number.NaN)
    }
  })
})

it('a lap is shown as a lap, not as the longest that there may be', () => {
  expect(entryAbout(['oval', 'lap'])?.example).toBe('2,640 ft')
  expect(entryAbout(['oval', 'lap'], 'metric')?.example).toBe('805 m')
})
