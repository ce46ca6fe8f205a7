import { describe, expect, it } from 'vitest'
import type { ProcedureContext } from '../../../src/compose/procedures/chosen.ts'
import { composeSheet } from '../../../src/compose/procedures/sheet.ts'
import type { ManualMethod, ManualStep } from '../../../src/model/manual/procedure.ts'
import type { Procedure } from '../../../src/validate/schemas/procedure.ts'
import { cautionWith, harrowHere } from '../support/harrow.ts'

const context: Pick<ProcedureContext, 'here' | 'caution' | 'reckoner' | 'worksheetOf' | 'known'> = {
  here: harrowHere('clay'),
  caution: cautionWith('danger'),
  reckoner: () => undefined,
  worksheetOf: (name) => ({ 'a.n1': 'W-10', 'a.n2': 'W-9', 'b.n': 'W-10' })[name],
  known: (name) => name !== 'a.n0',
}

const step = (say: string, more: Partial<ManualStep> = {}): ManualStep => ({
  number: 1,
  do: say,
  note: undefined,
  cautions: [],
  figures: [],
  drawing: undefined,
  ...more,
})

const method = (
  id: string,
  steps: readonly ManualStep[] = [step(`Do ${id} for {b.n}.`, { figures: ['a.n2'] })],
): ManualMethod => ({ id, title: id, choose: undefined, steps })

type Branches = Parameters<typeof composeSheet>[2]

const sheetOf = (
  change: Partial<Procedure['sheet']>,
  methods: readonly ManualMethod[],
  branches: Branches = [],
  written: Procedure['methods'] = [],
) =>
  composeSheet(
    {
      methods: written,
      stop: [{ text: 'It rains.' }, { text: 'The grader fails.', when: { has: 'grade' } }],
      sheet: {
        when: 'Daily.',
        figures: [{ figure: 'a.n1', label: 'one' }],
        drawing: 'sections',
        done: [{ text: 'It is even.' }],
        ...change,
      },
    } as unknown as Procedure,
    methods,
    branches,
    context as ProcedureContext,
  )

const branch = (found: string, method?: string, procedure?: string): Branches[number] => ({
  found,
  do: 'Do it.',
  method,
  procedure,
})

describe('the drawing of a posted sheet', () => {
  const citing = (id: string, drawing: string) => method(id, [step('Do it.', { drawing })])

  it('is the one asked for, where a step cites it', () =>
    expect(sheetOf({}, [citing('a', 'ridge'), citing('b', 'sections')]).drawing).toBe('sections'))

  it('is the first that a step cites, where no step here cites the one asked for', () => {
    expect(sheetOf({}, [citing('a', 'ridge'), citing('b', 'plan')]).drawing).toBe('ridge')
    expect(sheetOf({}, [method('a')]).drawing).toBeUndefined()
  })

  it('is none where none is asked for', () =>
    expect(sheetOf({ drawing: undefined }, [citing('a', 'ridge')]).drawing).toBeUndefined())
})

describe('a posted sheet', () => {
  it('holds every way that applies here, with the letter that leads to it from what was found', () => {
    const sheet = sheetOf(
      {},
      [method('first'), method('second')],
      [branch('Dry.', 'second'), branch('Wet.', undefined, 'seal')],
    )
    expect(sheet.groups.map((g) => [g.letter, g.title, g.steps.length])).toEqual([
      ['A', 'first', 1],
      ['B', 'second', 1],
    ])
    expect(sheet.look.map((l) => [l.found, l.letter, l.procedure])).toEqual([
      ['Dry.', 'B', undefined],
      ['Wet.', undefined, 'seal'],
    ])
  })

  it('needs no letters where there is one way', () => {
    const sheet = sheetOf({}, [method('only')], [branch('Dry.', 'only')])
    expect(sheet.groups.map((g) => [g.letter, g.title])).toEqual([[undefined, undefined]])
    expect(sheet.look[0]?.letter).toBeUndefined()
  })

  it('says once what all ways begin with, and counts on from there', () => {
    const sheet = sheetOf({}, [
      method('first', [step('Close the gates.'), step('Roll.')]),
      method('second', [step('Close the gates.'), step('Flatten.'), step('Go home.')]),
    ])
    expect(sheet.groups.map((g) => g.steps.map((s) => `${s.number} ${s.do}`))).toEqual([
      ['1 Close the gates.'],
      ['2 Roll.'],
      ['2 Flatten.', '3 Go home.'],
    ])
  })

  it('keeps of notes those alone that save a life', () => {
    const noted = [step('Stay.', { note: 'It kicks.' }), step('Write it down.', { note: 'Today.' })]
    const written = [
      { id: 'only', title: 'only', steps: [{ do: 'Stay.', note: 'It kicks.', vital: true }] },
    ] as Procedure['methods']
    const sheet = sheetOf({}, [method('only', noted)], [], written)
    expect(sheet.groups[0]?.steps.map((s) => s.note)).toEqual(['It kicks.', undefined])
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
