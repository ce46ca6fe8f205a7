import { describe, expect, it } from 'vitest'
import { termIndexOf } from '../../../src/compose/texts/term-index.ts'
import type { ManualProcedure } from '../../../src/model/manual/procedure.ts'
import { demoManual, demos, loadDemo } from '../../support/demo.ts'

const procedure = (said: Partial<ManualProcedure>): ManualProcedure => ({
  id: 'any',
  number: '1-1',
  title: '',
  bar: undefined,
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
    calls: [],
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

/** A manual with nothing but these procedures. */
const only = (...procedures: readonly string[]) => ({
  procedure: procedures,
  hazard: [],
  symptom: [],
  plan: [],
  reckoner: [],
  chapter: [],
  page: [],
})

const lap = { term: 'lap', main: ['procedure:elsewhere'] }

const placesOf = (said: Partial<ManualProcedure>) =>
  termIndexOf([lap], [procedure(said)], only('any')).flatMap((t) => t.places.map((p) => p.place))

describe('the index of terms', () => {
  it('takes no word inside another, and no name of a figure', () => {
    expect(placesOf({ purpose: 'One lap.' })).toHaveLength(1)
    expect(placesOf({ purpose: 'Two laps.' })).toHaveLength(1)
    expect(placesOf({ purpose: 'An overlap of {between.lap}, and [it](procedure:lap).' })).toEqual(
      [],
    )
  })

  it('names one place in a procedure: the first step that uses the term', () => {
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
    ])
  })

  it('does not point to the sheet or the lesson of a procedure, which stand elsewhere', () => {
    expect(
      placesOf({ training: { aims: ['Walk a lap.'], show: [], practice: [], questions: [] } }),
    ).toEqual([])
  })

  it('puts the main places first, as far as the manual has them', () => {
    const said = [{ ...procedure({ purpose: 'One lap.' }), id: 'other' }, procedure({})]
    const main = ['procedure:any', 'procedure:none', 'hazard:none']
    expect(termIndexOf([{ term: 'lap', main }], said, only('any', 'other'))).toEqual([
      {
        term: 'lap',
        places: [
          { place: 'procedure-any', main: true },
          { place: 'other-part-head', main: false },
        ],
      },
    ])
  })

  it('leaves out a term that is found nowhere', () => {
    expect(termIndexOf([lap], [procedure({})], only('any'))).toEqual([])
  })

  it('finds a term by its words, in few procedures: those that say most of it', () => {
    const many = Array.from({ length: 9 }, (_, i) => ({
      ...procedure({ purpose: 'Once around.', checks: i > 6 ? ['Once around.'] : [] }),
      id: `p${i}`,
    }))
    const entry = { ...lap, words: ['once around'] }
    const [found] = termIndexOf([entry], many, only())
    expect(found?.places.map((p) => p.place)).toEqual([
      'p0-part-head',
      'p1-part-head',
      'p7-part-head',
      'p8-part-head',
    ])
  })

  it.each(demos)('leads from every term to some place in %s, in alphabetical order', async (id) => {
    const { manual } = await demoManual(id)
    const { library } = await loadDemo(id)
    const terms = manual.termIndex.map((t) => t.term)
    expect(terms).toEqual(terms.toSorted((a, b) => a.localeCompare(b, 'en')))
    const written = library?.indexTerms.map((t) => t.value.term) ?? []
    expect(written.filter((t) => !terms.includes(t))).toEqual([])
  })

  it('knows what people look for first', async () => {
    const { manual } = await demoManual('larkmoor')
    const terms = new Set(manual.termIndex.map((t) => t.term))
    const first = ['dust', 'drains', 'water', 'lightning', 'fuel', 'radio', 'hard', 'deep']
    expect(first.filter((t) => !terms.has(t))).toEqual([])
  })
})
