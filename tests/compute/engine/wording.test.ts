import { describe, expect, it } from 'vitest'
import { calculation } from '../../../src/compute/calculation.ts'
import { createWording } from '../../../src/compute/engine/wording.ts'
import type { WorksheetWords } from '../../../src/model/worksheet-words.ts'

const table = calculation({
  id: 'table',
  sources: ['geometry'],
  inputs: { voltage: { symbol: 'U', kind: 'voltage', range: [0, 1e6] } },
  outputs: { distance: { symbol: 'd', kind: 'width', tex: '@voltage' } },
  told: { day: '2027-06-12', most: { si: 1e6, kind: 'voltage' } },
  refusals: ['beyond'],
  compute: () => ({ distance: 1 }),
})
const use = { id: 'line', calculation: table, bindings: {} }

const words: WorksheetWords = {
  worksheets: { line: { number: 7, title: { us: 'In feet', metric: 'In meters' } } },
  calculations: {
    table: {
      title: 'Table',
      about: 'As of {day}.',
      inputs: { voltage: 'voltage' },
      outputs: { distance: 'distance' },
      refusals: { beyond: 'the table ends at {most}' },
    },
  },
  reasons: { step: { us: 'one foot', metric: 'one meter' } },
  noNumber: {
    unknown: '{input} is not known',
    outside: '{input} is {value}, outside {low} to {high}',
    any: 'any',
  },
}

describe('createWording', () => {
  const us = createWording(words, { system: 'us', currency: 'USD' })
  const metric = createWording(words, { system: 'metric', currency: 'EUR' })

  it('says each system of units its own words', () => {
    expect([us.title(use), metric.title(use)]).toEqual(['In feet', 'In meters'])
    expect([us.reason('step'), metric.reason('step')]).toEqual(['one foot', 'one meter'])
  })

  it('puts what a calculation tells into its words, quantities in units', () => {
    expect(us.about(table)).toBe('As of 2027-06-12.')
    expect(us.refusal(table, 'beyond')).toBe('the table ends at 1,000 kV')
  })

  it('says between which bounds a formula holds', () => {
    expect(us.outside('depth', '3 in', undefined, '2 in')).toBe(
      'depth is 3 in, outside any to 2 in',
    )
    expect(us.unknown('depth')).toBe('depth is not known')
  })
})
