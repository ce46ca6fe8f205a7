import { describe, expect, it } from 'vitest'
import type { ProcedureContext } from '../../../src/compose/procedures/chosen.ts'
import { composeProcedure } from '../../../src/compose/procedures/procedure.ts'
import type { Procedure } from '../../../src/validate/schemas/procedure.ts'
import { facilityOf, halfMile } from '../support/context.ts'
import { cautionWith, harrowHere } from '../support/harrow.ts'

const context = (change: Partial<ProcedureContext> = {}): ProcedureContext => ({
  here: harrowHere('stone-dust'),
  facility: facilityOf(
    `${halfMile}equipment: [{ id: h, name: the red harrow, can: [harrow], from: own }]\nnotes: [{ procedure: one, text: Mind the soft turn. }]\n`,
  ).file,
  machine: (can) => (can === 'harrow' ? 'the red harrow' : undefined),
  caution: cautionWith('warning'),
  reckoner: () => undefined,
  present: (id) => id === 'two',
  worksheetOf: (name) => `W-${name.length}`,
  known: (name) => name !== 'harrow.unknown',
  ...change,
})

const procedure = (change: Partial<Procedure> = {}): Procedure => ({
  id: 'one',
  title: 'One',
  section: 'daily',
  order: 1,
  purpose: 'It is better.',
  triggers: ['Always.'],
  who: { people: 1, roles: 'One drives.', authority: 'The superintendent.' },
  time: [{ figure: 'harrow.time' }],
  cautions: ['dust'],
  measure: [{ do: 'Look.' }],
  methods: [{ id: 'plain', title: 'Plain', steps: [{ do: 'Drive.' }] }],
  checks: [{ text: 'It is even.' }],
  failures: [{ see: 'It is not.', do: 'Again.' }],
  stop: [{ text: 'It rains.' }],
  records: ['The hour.'],
  background: [{ text: 'It was always so.', source: 'common-practice' }],
  sheet: {
    when: 'Daily.',
    figures: [{ figure: 'harrow.laps', label: 'laps' }],
    done: [{ text: 'It is even.' }],
  },
  training: { aims: ['A.'], show: ['S.'], practice: ['P.'], questions: [] },
  ...change,
})

describe('a procedure', () => {
  it('keeps steps and methods that apply here, and counts the steps that are kept', () => {
    const { methods } = composeProcedure(
      procedure({
        methods: [
          {
            id: 'plain',
            title: 'Plain',
            steps: [
              { do: 'Close the gates.' },
              { do: 'Grade.', when: { has: 'grade' } },
              { do: 'Harrow.', cautions: ['dust'] },
            ],
          },
          {
            id: 'by-grader',
            title: 'By grader',
            when: { has: 'grade' },
            steps: [{ do: 'Grade.' }],
          },
          { id: 'idle', title: 'Idle', steps: [{ do: 'Grade.', when: { has: 'grade' } }] },
        ],
      }),
      '2.1',
      context(),
    )
    expect(methods.map((m) => m.id)).toEqual(['plain'])
    expect(methods[0]?.steps.map((s) => [s.number, s.do, s.cautions.length])).toEqual([
      [1, 'Close the gates.', 0],
      [2, 'Harrow.', 1],
    ])
  })

  it('leaves out what names a quantity that is not known here', () => {
    const composed = composeProcedure(
      procedure({
        triggers: ['Always.', 'After {harrow.unknown}.'],
        time: [{ figure: 'harrow.unknown' }, { figure: 'harrow.time', text: 'in all' }],
        materials: [{ name: 'grit', figure: 'harrow.unknown' }, { name: 'pins' }],
        measure: [{ do: 'Look.', how: 'For {harrow.unknown}.' }],
        methods: [
          {
            id: 'plain',
            title: 'Plain',
            steps: [
              {
                do: 'Drive.',
                note: 'At {harrow.unknown}.',
                figures: ['harrow.unknown', 'harrow.laps'],
              },
            ],
          },
        ],
        background: [
          { text: 'It takes {harrow.unknown}.', source: 'common-practice' },
          { text: 'It was always so.', source: 'common-practice' },
        ],
      }),
      '2.1',
      context(),
    )
    expect(composed.triggers).toEqual(['Always.'])
    expect(composed.time).toEqual([{ figure: 'harrow.time', text: 'in all' }])
    expect(composed.materials.map((m) => m.name)).toEqual(['pins'])
    expect(composed.measure).toEqual([{ do: 'Look.', how: undefined }])
    expect(composed.methods[0]?.steps[0]).toMatchObject({
      note: undefined,
      figures: ['harrow.laps'],
    })
    expect(composed.background.map((b) => b.text)).toEqual(['It was always so.'])
  })

  it('leads only to methods and procedures that the manual has', () => {
    const composed = composeProcedure(
      procedure({
        branches: [
          { found: 'Dry.', do: 'Water.', method: 'plain', procedure: 'two' },
          { found: 'Wet.', do: 'Wait.', method: 'gone', procedure: 'three' },
        ],
        failures: [{ see: 'Holes.', do: 'Fill.', procedure: 'three' }],
        next: 'two',
      }),
      '2.1',
      context(),
    )
    expect(composed.branches.map((b) => [b.method, b.procedure])).toEqual([
      ['plain', 'two'],
      [undefined, undefined],
    ])
    expect(composed.failures[0]?.procedure).toBeUndefined()
    expect(composed.next).toBe('two')
  })

  it('names the machine that does the work here, or what to do instead, and what the facility adds', () => {
    const composed = composeProcedure(
      procedure({
        needs: [
          { can: 'harrow', why: 'It loosens.' },
          { can: 'grade', why: 'It moves.', instead: 'By hand.' },
        ],
      }),
      '2.1',
      context(),
    )
    expect(composed.gear.map((g) => [g.machine, g.instead])).toEqual([
      ['the red harrow', undefined],
      [undefined, 'By hand.'],
    ])
    expect(composed.notes).toEqual(['Mind the soft turn.'])
  })
})
