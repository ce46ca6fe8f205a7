import { describe, expect, it } from 'vitest'
import type { ProcedureContext } from '../../../src/compose/procedures/chosen.ts'
import { composeSheet } from '../../../src/compose/procedures/sheet.ts'
import type { ManualMethod } from '../../../src/model/manual/procedure.ts'
import type { Procedure } from '../../../src/validate/schemas/procedure.ts'

const context: Pick<ProcedureContext, 'here' | 'caution' | 'reckoner' | 'worksheetOf' | 'known'> = {
  here: {
    surface: 'clay',
    rail: 'pylons',
    units: 'us',
    capabilities: new Set(['harrow']),
    si: () => undefined,
  },
  caution: (id) => ({ id, signal: 'danger', hazard: 'h', avoid: 'a', sources: [] }),
  reckoner: () => undefined,
  worksheetOf: (name) => ({ 'a.n1': 'W-10', 'a.n2': 'W-9', 'b.n': 'W-10' })[name],
  known: (name) => name !== 'a.n0',
}

const method = (id: string, drawing?: string): ManualMethod => ({
  id,
  title: id,
  choose: undefined,
  drawing,
  steps: [
    { number: 1, do: `Do ${id} for {b.n}.`, note: undefined, cautions: [], figures: ['a.n2'] },
  ],
})

const sheetOf = (change: Partial<Procedure['sheet']>, methods: readonly ManualMethod[]) =>
  composeSheet(
    {
      stop: [{ text: 'It rains.' }, { text: 'The grader fails.', when: { has: 'grade' } }],
      sheet: {
        when: 'Daily.',
        cautions: ['dust'],
        figures: [{ figure: 'a.n1', label: 'one' }],
        methods: ['first', 'second'],
        drawing: 'section-turn',
        done: [{ text: 'It is even.' }],
        ...change,
      },
    } as Procedure,
    methods,
    context as ProcedureContext,
  )

describe('a posted sheet', () => {
  it('follows the first of its methods that is left here, with that method’s drawing', () => {
    const sheet = sheetOf({}, [method('second', 'ridge'), method('third')])
    expect(sheet.steps[0]?.do).toBe('Do second for {b.n}.')
    expect(sheet.drawing).toBe('ridge')
    expect(sheetOf({}, [method('first')]).drawing).toBe('section-turn')
    expect(sheetOf({}, [method('third')]).steps[0]?.do).toBe('Do third for {b.n}.')
  })

  it('shows at most five large numbers, all of them known', () => {
    const figures = Array.from({ length: 8 }, (_, i) => ({ figure: `a.n${i}`, label: `${i}` }))
    const sheet = sheetOf({ figures }, [method('first')])
    expect(sheet.figures.map((f) => f.name)).toEqual(['a.n1', 'a.n2', 'a.n3', 'a.n4', 'a.n5'])
  })

  it('names the worksheets behind its numbers and steps once each, in their order', () => {
    expect(sheetOf({}, [method('first')]).worksheets).toEqual(['W-9', 'W-10'])
  })

  it('says only of what can happen here when to stop', () => {
    expect(sheetOf({}, [method('first')]).stop).toEqual(['It rains.'])
  })
})
