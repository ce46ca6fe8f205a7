import { expect, it } from 'vitest'
import type { Manual } from '../../../../../src/model/manual.ts'
import { renderDrawings } from '../../../../../src/render/drawings/drawings.ts'
import { demoManual } from '../../../../support/demo.ts'

const { manual, words } = await demoManual('larkmoor')
const drawings = renderDrawings(manual, words)

const withDepth = (text: string, si: number): Manual => {
  const known = manual.quantities['practice.print-depth']
  if (!known) throw new Error('no depth of a print')
  return {
    ...manual,
    quantities: { ...manual.quantities, 'practice.print-depth': { ...known, text, si } },
  }
}

it('says in words all that it shows, with the depth that is usual here', () => {
  const { alt = '' } = drawings['hoof-prints'] ?? {}
  const kinds = ['even', 'crumbled', 'deep', 'hard', 'slid', 'passedOver', 'full']
  for (const kind of kinds) {
    expect(alt).toContain(words.labels['hoof-prints']?.[kind])
    expect(alt).toContain(words.labels['hoof-prints']?.[`${kind}Shows`])
  }
  expect(alt).toContain(manual.quantities['practice.print-depth']?.text)
})

it('draws a usual print as deep as it is here', () => {
  const shallow = renderDrawings(withDepth('1/4 in', 0.00635), words)['hoof-prints']
  expect(shallow?.at('page')).toContain('>¼ in<')
  expect(shallow?.alt).toContain('1/4 in')
  expect(shallow?.at('page')).not.toBe(drawings['hoof-prints']?.at('page'))
})

it('asks a learner about the prints by their letters, and tells no names', () => {
  const mixed = drawings['hoof-prints-mixed']
  const [alt, svg] = [mixed?.alt ?? '', mixed?.at('page') ?? '']
  const names = ['even', 'crumbled', 'deep', 'hard', 'slid', 'passedOver', 'full'].map(
    (kind) => words.labels['hoof-prints']?.[kind] ?? '',
  )
  for (const name of names) {
    expect(svg).not.toContain(`>${name}<`)
    expect(alt).not.toContain(`${name}:`)
  }
  const letterOf = (shows: string): string =>
    new RegExp(`([A-G]): ${words.labels['hoof-prints']?.[shows]?.slice(0, 12)}`).exec(alt)?.[1] ??
    ''
  const questions = manual.procedures.find((p) => p.id === 'hoof-prints')?.training.questions ?? []
  const hard = questions.find((q) => q.ask.includes('too hard'))
  expect(hard?.choices[(hard?.right ?? 0) - 1]).toBe(`Print ${letterOf('hardShows')}`)
  expect(questions.some((q) => q.ask.startsWith(`Print ${letterOf('passedOverShows')} `))).toBe(
    true,
  )
})
