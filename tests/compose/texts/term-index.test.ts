import { describe, expect, it } from 'vitest'
import { composeTermIndex } from '../../../src/compose/texts/term-index.ts'
import type { ManualProcedure } from '../../../src/model/manual/procedure.ts'
import { smallManual } from '../../support/small.ts'

const procedure = (said: Partial<ManualProcedure>): ManualProcedure => ({
  id: 'any',
  number: '1-1',
  title: '',
  section: '',
  purpose: '',
  triggers: [],
  symptoms: [],
  who: { people: 1, roles: '', authority: '' },
  time: [],
  gear: [],
  tools: [],
  materials: [],
  cautions: [],
  before: 'start',
  measure: [],
  branches: [],
  methods: [],
  checks: [],
  failures: [],
  stop: [],
  records: [],
  background: [],
  references: [],
  reckoners: [],
  next: undefined,
  notes: [],
  sheet: {
    when: '',
    figures: [],
    calls: false,
    look: [],
    groups: [],
    drawing: undefined,
    done: [],
    stop: [],
    reckoner: undefined,
    worksheets: [],
  },
  training: { aims: [], show: [], practice: [], questions: [] },
  ...said,
})

const step = (number: number, say: string) => ({
  number,
  do: say,
  note: undefined,
  cautions: [],
  figures: [],
  drawing: undefined,
})

const placesOf = (said: Partial<ManualProcedure>) =>
  composeTermIndex({
    parts: { terms: [{ term: 'lap', means: '' }], procedures: [procedure(said)] },
  }).flatMap((t) => t.places)

describe('the index of terms', () => {
  it('takes no word inside another, and no name of a figure', () => {
    expect(placesOf({ purpose: 'One lap.' })).toHaveLength(1)
    expect(placesOf({ purpose: 'Two laps.' })).toHaveLength(1)
    expect(placesOf({ purpose: 'An overlap of {between.lap}, and [it](procedure:lap).' })).toEqual(
      [],
    )
  })

  it('names one place for each part of a procedure: the first step of a method that uses the term', () => {
    const methods = [
      {
        id: 'one',
        title: '',
        choose: undefined,
        steps: [step(1, 'Walk.'), step(2, 'Drive a lap.'), step(3, 'Drive a lap.')],
      },
      {
        id: 'two',
        title: '',
        choose: undefined,
        steps: [step(1, 'Drive a lap.')],
      },
    ]
    expect(placesOf({ methods, checks: ['One lap is done.', 'The lap is smooth.'] })).toEqual([
      'any-one-step-2',
      'any-two-step-1',
      'any-part-checks',
    ])
  })

  it('does not point to the sheet or the lesson of a procedure, which stand elsewhere', () => {
    expect(
      placesOf({ training: { aims: ['Walk a lap.'], show: [], practice: [], questions: [] } }),
    ).toEqual([])
  })

  it('names the procedures in the order of the binder, each place once', async () => {
    const { manual } = await smallManual()
    expect(manual.termIndex).toEqual([
      {
        term: 'base',
        throughout: false,
        procedures: ['harrow'],
        places: ['harrow-part-measure', 'harrow-whole-step-2', 'harrow-part-failures'],
      },
      {
        term: 'cushion',
        throughout: false,
        procedures: ['harrow', 'water'],
        places: ['harrow-part-head', 'harrow-part-measure', 'water-part-head'],
      },
      {
        term: 'lap',
        throughout: false,
        procedures: ['harrow'],
        places: ['harrow-part-why'],
      },
    ])
  })

  it('names no place for a term that is met throughout', () => {
    const procedures = Array.from({ length: 40 }, (_, i) => ({
      ...procedure({ purpose: 'One lap.' }),
      id: `p${i}`,
    }))
    const terms = [{ term: 'lap', means: '' }]
    expect(composeTermIndex({ parts: { terms, procedures } })).toEqual([
      { term: 'lap', throughout: true, procedures: [], places: [] },
    ])
  })
})
