import { describe, expect, it } from 'vitest'
import { composeTermIndex } from '../../../src/compose/texts/term-index.ts'
import type { ManualProcedure } from '../../../src/model/manual.ts'
import { demoManual } from '../../support/demo.ts'

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
    cautions: [],
    figures: [],
    steps: [],
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
        drawing: undefined,
        steps: [step(1, 'Walk.'), step(2, 'Drive a lap.'), step(3, 'Drive a lap.')],
      },
      {
        id: 'two',
        title: '',
        choose: undefined,
        drawing: undefined,
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

  it('names the procedures in the order of the binder, each place once, and none for a term that is met throughout', async () => {
    const { manual } = await demoManual('larkmoor')
    const order = manual.procedures.map((p) => p.id)
    for (const { term, procedures, places, throughout } of manual.termIndex) {
      expect(
        [...procedures].sort((a, b) => order.indexOf(a) - order.indexOf(b)),
        term,
      ).toEqual(procedures)
      expect(new Set(places).size, term).toBe(places.length)
      expect(places.length === 0, term).toBe(throughout)
      for (const p of procedures)
        expect(
          places.some((at) => at.startsWith(`${p}-`)),
          `${term} in ${p}`,
        ).toBe(true)
    }
    expect(manual.termIndex.find((t) => t.term === 'rail')).toMatchObject({
      throughout: true,
      procedures: [],
    })
    expect(manual.termIndex.find((t) => t.term === 'windrow')?.procedures).toContain('grade')
  })
})
