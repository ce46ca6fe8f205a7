import { readFileSync } from 'node:fs'
import path from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { answerChanges, measurementChanges, personChanges } from '../../../src/edit/form/answers.ts'
import { changedLines } from '../../../src/edit/form/changed-lines.ts'
import { valueAt } from '../../../src/edit/form/data.ts'
import {
  answered,
  type Draft,
  draftOf,
  reordered,
  settled,
  steppedBack,
  steppedForward,
  withTable,
} from '../../../src/edit/form/draft.ts'
import { merged } from '../../../src/edit/form/merged.ts'
import { type Question, questionsOf } from '../../../src/edit/form/question.ts'
import { understand } from '../../../src/edit/form/understand.ts'
import type { Change } from '../../../src/edit/splice.ts'
import { facility } from '../../../src/validate/schemas/facility.ts'
import { demoFolder, demos } from '../../support/demo.ts'

const textOf = (demo: string): string =>
  readFileSync(path.join(demoFolder(demo), 'facility.yaml'), 'utf8')

function having(draft: Draft, changes: readonly Change[], at = ''): Draft {
  const made = answered(draft, changes, at)
  if (!made.ok) throw new Error(made.why)
  return made.draft
}

/** Questions that stand outside lists, with something that somebody could type. */
const plain = questionsOf(facility).flatMap((question): [Question, string][] => {
  if (question.kind === 'quantity')
    return [
      [question, question.spec.range[0]],
      [question, question.spec.range[1]],
    ]
  if (question.kind === 'text') return [[question, 'some "text": with #, and more']]
  if (question.kind === 'choice') return [[question, question.choices[0] ?? '']]
  if (question.kind === 'texts') return [[question, 'here\nthere, too']]
  if (question.kind === 'yes-no') return [[question, 'true']]
  return []
})

const answers = fc.array(
  fc.record({ which: fc.integer({ min: 0, max: plain.length - 1 }), cleared: fc.boolean() }),
  { minLength: 1, maxLength: 8 },
)

const locale = { system: 'us', currency: 'USD' } as const

describe('any row of answers', () => {
  it.each(demos)('leaves every line of %s that none of them is about as it was', (demo) => {
    const text = textOf(demo)
    fc.assert(
      fc.property(answers, (row) => {
        let draft = draftOf(text)
        const names = new Set<string>()
        for (const { which, cleared } of row) {
          const [question, typed] = plain[which] as [Question, string]
          const { value } = understand({ question, at: question.path, locale }, typed)
          const changes = answerChanges(draft.data, question.path, cleared ? undefined : value)
          draft = having(draft, changes)
          // An entry goes with the groups that this leaves empty.
          for (const { path: at } of changes) for (const step of at) names.add(String(step))
        }
        for (const { before } of changedLines(text, draft.text))
          for (const line of before)
            expect(
              [...names].some((name) => line.includes(name) || line.includes('of: ')),
              line,
            ).toBe(true)
        // Every step back in turn leads to the file as it was, to the byte.
        while (draft.steps.length > 0) draft = steppedBack(draft)
        expect(draft.text).toBe(text)
      }),
      { numRuns: 12 },
    )
  })
})

describe('a file from nothing', () => {
  it('takes what is answered, with what follows from it', () => {
    let draft = draftOf('')
    draft = having(draft, answerChanges(draft.data, ['emergency', 'number'], '911'))
    draft = having(draft, answerChanges(draft.data, ['name'], 'Our Fair & Races'))
    draft = having(draft, answerChanges(draft.data, ['units'], 'us'))
    draft = having(draft, answerChanges(draft.data, ['oval', 'lap'], '2,640 ft'))
    draft = having(draft, personChanges(draft.data, 'superintendent', 'name', 'A. Name', true))
    draft = having(draft, personChanges(draft.data, 'superintendent', 'phone', '911', true))
    expect(draft.text).toBe(
      [
        'emergency:',
        '  number: "911"',
        '  stops-racing: [superintendent]',
        'name: Our Fair & Races',
        'id: our-fair-races',
        'units: us',
        'paper: letter',
        'oval:',
        '  lap: 2,640 ft',
        'contacts:',
        '  - { role: superintendent, name: A. Name, phone: "911" }',
        '',
      ].join('\n'),
    )
    draft = having(draft, personChanges(draft.data, 'superintendent', 'phone', undefined, true))
    draft = having(draft, personChanges(draft.data, 'superintendent', 'name', undefined, true))
    expect(draft.text).not.toMatch(/contacts|stops-racing/)
    draft = having(draft, answerChanges(draft.data, ['units'], 'metric'))
    draft = having(draft, answerChanges(draft.data, ['name'], 'Other'))
    expect(draft.data).toMatchObject({ paper: 'a4', id: 'other' })
  })

  it('keeps a paper and a short name that somebody has chosen', () => {
    const draft = draftOf('id: own\nname: Our Fair\nunits: us\npaper: a4\n')
    const renamed = having(draft, answerChanges(draft.data, ['name'], 'Other'))
    const metric = having(renamed, answerChanges(renamed.data, ['units'], 'us'))
    expect(metric.data).toEqual({ id: 'own', name: 'Other', units: 'us', paper: 'a4' })
  })
})

describe('steps', () => {
  it('hold what is typed in one field until it is left', () => {
    const typing = ['2', '26', '2640 ft'].reduce(
      (draft, value) => having(draft, [{ path: ['oval', 'lap'], value }], 'lap'),
      draftOf('id: our\n'),
    )
    expect(typing.steps).toHaveLength(1)
    const again = having(settled(typing), [{ path: ['oval', 'lap'], value: '2641 ft' }], 'lap')
    expect(again.steps).toHaveLength(2)
    expect(steppedBack(again).data).toMatchObject({ oval: { lap: '2640 ft' } })
    expect(steppedBack(steppedBack(again)).text).toBe('id: our\n')
  })

  it('are refused where the file cannot be read', () => {
    const draft = draftOf('id: [our\n')
    expect(draft.data).toBeUndefined()
    expect(answered(draft, [{ path: ['id'], value: 'x' }], '')).toMatchObject({ ok: false })
  })
})

describe('a value that somebody has measured', () => {
  it('leaves its place for the list, with day and name', () => {
    const draft = draftOf('oval:\n  lap: 2,640 ft\n  straight: 600 ft\n')
    const entry = { date: '2027-05-01', by: 'A. Name' }
    const changes = measurementChanges(draft.data, 'oval.lap', ['oval', 'lap'], entry)
    expect(having(draft, changes).data).toEqual({
      oval: { straight: '600 ft' },
      measurements: [{ of: 'oval.lap', value: '2,640 ft', ...entry }],
    })
  })
})

describe('entries of a list', () => {
  it('change places with their remarks, and nothing else does', () => {
    const text = textOf('larkmoor')
    const down = reordered(draftOf(text), ['contacts'], 0, 1)
    if (!down.ok) throw new Error(down.why)
    expect(changedLines(text, down.draft.text).flatMap((c) => c.before)).toHaveLength(1)
    const up = reordered(down.draft, ['contacts'], 1, 0)
    expect(up.ok && up.draft.text).toBe(text)
    const machines = reordered(draftOf(text), ['equipment'], 0, 1)
    expect(machines.ok && valueAt(machines.draft.data, ['equipment', 0, 'id'])).toBe('harrow')
    expect(machines.ok && valueAt(machines.draft.data, ['equipment', 1, 'fuel'])).toBe('5 gal/h')
  })

  it.each([
    ['in brackets', 'race: [a, "b, c"]\nx: 1\n'],
    ['without an end of the last line', 'race:\n  - { a: 1 }   # first\n  - { a: 2 }'],
    ['with carriage returns', 'race:\r\n  - { a: 1 }\r\n  - { a: 2 }\r\n'],
  ])('change places there and back: %s', (_name, text) => {
    const there = reordered(draftOf(text), ['race'], 0, 1)
    if (!there.ok) throw new Error(there.why)
    expect(there.draft.text).not.toBe(text)
    const back = reordered(there.draft, ['race'], 0, 1)
    expect(back.ok && back.draft.text.trimEnd()).toBe(text.trimEnd())
  })

  it('that there are not stay where they are', () =>
    expect(reordered(draftOf('race: [a]\n'), ['race'], 0, 1)).toMatchObject({ ok: false }))
})

describe('a file that somebody else has changed meanwhile', () => {
  const base = 'name: Our Fair   # as on the gate\noval:\n  lap: 2,640 ft\ncrew: { people: 3 }\n'

  it('takes the answers beside what is new in it', () => {
    const mine = base.replace('2,640', '2,641')
    const theirs = `${base.replace('people: 3', 'people: 4')}# a remark\n`
    const { draft, clashes } = merged(base, mine, theirs)
    expect(clashes).toEqual([])
    expect(draft.text).toBe(theirs.replace('2,640', '2,641'))
  })

  it('keeps what both have changed, and tells it', () => {
    const mine = base.replace('people: 3', 'people: 5')
    const theirs = base.replace('people: 3', 'people: 4')
    const { draft, clashes } = merged(base, mine, theirs)
    expect(draft.text).toBe(theirs)
    expect(clashes).toEqual([{ path: ['crew', 'people'], mine: 5, theirs: 4 }])
    expect(merged(base, mine, mine).clashes).toEqual([])
  })

  it('keeps lists whole', () => {
    const list = `${base}contacts:\n  - { role: fire, name: A }\n`
    const mine = `${list}  - { role: police, name: B }\n`
    const both = merged(list, mine, `${list}  - { role: power, name: C }\n`)
    expect(both.clashes.map(({ path: at }) => at)).toEqual([['contacts']])
    const one = merged(list, mine, list.replace('2,640', '2,642'))
    expect(one.draft.data).toMatchObject({
      oval: { lap: '2,642 ft' },
      contacts: [{}, { name: 'B' }],
    })
    const gone = merged(list, base, list)
    expect(gone.draft.text).toBe(base)
  })
})

it('lines that change are told with those before, and their number', () => {
  expect(changedLines('a\nb\nc\n', 'a\nB\nc\nd\n')).toEqual([
    { line: 2, before: ['b'], after: ['B'] },
    { line: 4, before: [], after: ['d'] },
  ])
  expect(changedLines('a\n', 'a\n')).toEqual([])
  expect(changedLines('', 'a\n')).toEqual([{ line: 1, before: [], after: ['a'] }])
})

describe('steps back and forward', () => {
  it('lead there and back again, whatever was answered, until something else is', () => {
    const text = textOf('larkmoor')
    fc.assert(
      fc.property(answers, fc.integer({ min: 1, max: 8 }), (row, count) => {
        let draft = draftOf(text)
        for (const { which, cleared } of row) {
          const [question, typed] = plain[which] as [Question, string]
          const { value } = understand({ question, at: question.path, locale }, typed)
          draft = having(draft, [{ path: question.path, value: cleared ? undefined : value }])
        }
        const steps = Math.min(count, draft.steps.length)
        const texts = [draft.text]
        let gone = draft
        for (let i = 0; i < steps; i++) {
          gone = steppedBack(gone)
          texts.push(gone.text)
        }
        expect(gone.ahead).toHaveLength(steps)
        for (let i = steps - 1; i >= 0; i--) {
          const other = having(gone, [{ path: ['name'], value: `Fair ${i}` }])
          expect(other.ahead).toEqual([])
          gone = steppedForward(gone)
          expect(gone.text).toBe(texts[i])
        }
        expect(gone).toMatchObject({ text: draft.text, data: draft.data, ahead: [] })
        expect(gone.steps).toHaveLength(draft.steps.length)
      }),
      { numRuns: 30 },
    )
  })

  it('take the tables along', () => {
    const made = withTable(draftOf('name: A\n'), { name: 'depths.csv', text: 'x' }, [], 'a')
    const draft = made.ok ? made.draft : draftOf('')
    expect(draft.tables.get('depths.csv')).toBe('x')
    const back = steppedBack(draft)
    expect(back.tables.size).toBe(0)
    expect(steppedForward(back).tables.get('depths.csv')).toBe('x')
  })
})
