import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import * as z from 'zod'
import { answerChanges } from '../../../src/edit/form/answers.ts'
import { textAt } from '../../../src/edit/form/data.ts'
import { answered, draftOf } from '../../../src/edit/form/draft.ts'
import {
  aboutQuestion,
  type Question,
  questionAt,
  questionsOf,
} from '../../../src/edit/form/question.ts'
import { type Screen, screensOf } from '../../../src/edit/form/subjects.ts'
import { measuredFact, typedOf, understand } from '../../../src/edit/form/understand.ts'
import { factPaths } from '../../../src/model/fact-spec.ts'
import type { Path } from '../../../src/read/read-yaml.ts'
import { schemaAt } from '../../../src/validate/schema-advice/schema-keys.ts'
import { facility } from '../../../src/validate/schemas/facility.ts'
import { form } from '../../../src/validate/schemas/form.ts'
import { demoFolder, demos, folders } from '../../support/demo.ts'

const questions = questionsOf(facility)
const said = form.parse(parse(readFileSync(path.join(folders.content, 'form.yaml'), 'utf8')))
const textOf = (demo: string): string =>
  readFileSync(path.join(demoFolder(demo), 'facility.yaml'), 'utf8')

type Leaf = { readonly at: Path; readonly value: unknown }

/** What a file says, by the places at which the form asks: a list of texts is one answer. */
function leavesOf(data: unknown, at: Path = []): readonly Leaf[] {
  const isTexts = Array.isArray(data) && data.every((entry) => typeof entry !== 'object')
  if (typeof data !== 'object' || data === null || isTexts) return [{ at, value: data }]
  return Object.entries(data).flatMap(([key, value]) =>
    leavesOf(value, [...at, Array.isArray(data) ? Number(key) : key]),
  )
}

describe.each(demos)('the form of %s', (demo) => {
  const text = textOf(demo)
  const data = parse(text) as { units: 'us' | 'metric'; currency: string }
  const locale = { system: data.units, currency: data.currency }
  const leaves = leavesOf(data)
  const draft = draftOf(text)

  it('has a question for every entry', () => {
    const without = leaves.filter(({ at }) => !questionAt(questions, at))
    expect(leaves.length).toBeGreaterThan(40)
    expect(without.map(({ at }) => at.join('.'))).toEqual([])
  })

  it('shows every answer so that it comes back unchanged, without a fault', () => {
    for (const { at, value } of leaves) {
      const found = questionAt(questions, at) as Question
      const share = found.kind === 'shares'
      const question: Question = share ? { ...found, kind: 'fact-value' } : found
      const of = share ? 'sieve.passing' : textAt(data, [...at.slice(0, -1), 'of'])
      const typed = typedOf(question, value)
      const understood = understand({ question, at, locale, fact: measuredFact(of) }, typed)
      expect({ at: at.join('.'), fault: understood.fault }).toEqual({ at: at.join('.') })
      expect({ at: at.join('.'), value: understood.value }).toEqual({ at: at.join('.'), value })
      expect(understood.typed).toBe(typed)
      if (share) continue
      const again = answered(draft, [{ path: at, value: understood.value }], 'again')
      expect(again.ok && again.draft.text === text, at.join('.')).toBe(true)
    }
  })
})

/** All questions of a screen, those that come first by their entries. */
const pathsOn = ({ first, more }: Screen): readonly string[] => [
  ...first.flatMap(({ question }) => question.entries ?? []),
  ...more.map((question) => question.path.join('.')),
]

describe('the screens', () => {
  const screens = screensOf(said, questions)

  it('ask everything once, beginning with twelve questions', () => {
    const paths = screens.flatMap(pathsOn)
    expect([...paths].sort()).toEqual(questions.map((q) => q.path.join('.')).sort())
    expect(new Set(paths).size).toBe(paths.length)
    expect(said.first).toHaveLength(12)
    expect(screens.flatMap(({ first }) => first).map(({ number }) => number)).toEqual(
      said.first.map((_question, i) => i + 1),
    )
  })

  it('leave nothing over for the last one, which takes what is new', () => {
    expect(screens.at(-1)?.more).toEqual([])
    const schema = facility.extend({ paddock: z.strictObject({ color: z.string() }).optional() })
    const fresh = screensOf(said, questionsOf(schema)).at(-1)?.more ?? []
    expect(fresh.map((q) => q.path.join('.'))).toEqual(['paddock.color'])
    expect(fresh.map((q) => aboutQuestion(q, 'us').label)).toEqual(['Color'])
  })

  it('ask for every fact that a file may state', () => {
    const stated = factPaths.filter((fact) => schemaAt(facility, fact.split('.')) !== undefined)
    expect(stated.length).toBeGreaterThan(180)
    expect(stated.filter((fact) => !questionAt(questions, fact.split('.')))).toEqual([])
  })

  it('call every question and every choice by words', () => {
    const all = (list: readonly Question[]): readonly Question[] =>
      list.flatMap((q) => [q, ...(q.kind === 'list' ? all(q.fields) : [])])
    const own = ['contacts.role', 'emergency.stops-racing', 'cushion.material', 'climate.month']
    for (const question of all(questions)) {
      const at = question.path.join('.')
      const { label } = aboutQuestion(question, 'us')
      expect(label.length, at).toBeGreaterThan(2)
      if ((question.kind !== 'choice' && question.kind !== 'choices') || own.includes(at)) continue
      expect(Object.keys(said.choices[at] ?? {}).sort(), at).toEqual([...question.choices].sort())
    }
    const choosing = all(questions).flatMap((q) =>
      q.kind === 'choice' || q.kind === 'choices' ? [q.path.join('.')] : [],
    )
    expect(Object.keys(said.choices).filter((at) => !choosing.includes(at))).toEqual([])
    const lists = all(questions).flatMap((q) => (q.kind === 'list' ? [q.path.join('.')] : []))
    expect(Object.keys(said.says.entries).sort()).toEqual([...lists].sort())
  })
})

describe('an answer', () => {
  it('changes the measurement that goes before it', () => {
    const data: unknown = parse(textOf('larkmoor'))
    expect(answerChanges(data, ['oval', 'cross-fall', 'turns'], '6.6 %')).toEqual([
      { path: ['measurements', 0, 'value'], value: '6.6 %' },
    ])
    expect(answerChanges(data, ['equipment', 5, 'flow'], '170 gal/min')).toEqual([
      { path: ['measurements', 6, 'value'], value: '170 gal/min' },
    ])
    expect(answerChanges(data, ['oval', 'lap'], '2,641 ft')).toEqual([
      { path: ['oval', 'lap'], value: '2,641 ft' },
    ])
  })
})
