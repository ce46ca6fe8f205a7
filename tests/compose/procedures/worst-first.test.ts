import { describe, expect, it } from 'vitest'
import { beforeWhat, worstFirst } from '../../../src/compose/procedures/worst-first.ts'
import type { ManualCaution } from '../../../src/model/manual/caution.ts'
import type { ManualMethod } from '../../../src/model/manual/procedure.ts'
import type { Procedure } from '../../../src/validate/schemas/procedure.ts'

const caution = (id: string, signal: ManualCaution['signal'], machine = false): ManualCaution => ({
  id,
  signal,
  hazard: id,
  avoid: '',
  more: undefined,
  machine,
  sources: [],
})

const shaft = caution('shaft', 'danger', true)
const horse = caution('horse', 'warning')
const tamper = caution('tamper', 'warning')
const back = caution('back', 'caution')

const way = (...ofSteps: readonly (readonly ManualCaution[])[]): ManualMethod => ({
  id: 'way',
  title: 'Way',
  choose: undefined,
  steps: ofSteps.map((cautions, i) => ({
    number: i + 1,
    do: 'Do it.',
    note: undefined,
    cautions,
    figures: [],
    drawing: undefined,
  })),
})

const ids = (methods: readonly ManualMethod[]): readonly (readonly string[])[] =>
  methods.flatMap((m) => m.steps.map((s) => s.cautions.map((c) => c.id)))

describe('the worst signal of a procedure', () => {
  it('moves from its step into the box at the head when nothing there is as bad', () => {
    const { cautions, methods } = worstFirst([horse], [way([], [shaft, tamper], [back])])
    expect(cautions.map((c) => c.id)).toEqual(['shaft', 'horse'])
    expect(ids(methods)).toEqual([[], ['tamper'], ['back']])
  })

  it('stays at its step when the box has one as bad', () => {
    const { cautions, methods } = worstFirst([horse], [way([tamper], [back])])
    expect(cautions.map((c) => c.id)).toEqual(['horse'])
    expect(ids(methods)).toEqual([['tamper'], ['back']])
  })

  it('is the box when nothing else is in it here', () => {
    const { cautions, methods } = worstFirst([], [way([tamper], [back])])
    expect(cautions.map((c) => c.id)).toEqual(['tamper', 'back'])
    expect(ids(methods)).toEqual([[], []])
  })
})

describe('the box at the head', () => {
  const procedure = (calls?: readonly string[]) => ({ sheet: { calls } }) as unknown as Procedure

  it('is read before a machine moves where one does, at the head or in a step', () => {
    expect(beforeWhat(procedure(), [horse], [way([shaft])])).toBe('machine')
    expect(beforeWhat(procedure(['fire']), [shaft], [way([])])).toBe('machine')
  })

  it('is for whoever helps where help is called for, and else read before the start', () => {
    expect(beforeWhat(procedure(['fire']), [horse], [way([tamper])])).toBe('self')
    expect(beforeWhat(procedure(), [horse], [way([tamper])])).toBe('start')
  })
})
