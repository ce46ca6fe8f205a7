import { expect, it } from 'vitest'
import earth from '../../shared/published/earth.cases.json' with { type: 'json' }
import geodesy from '../../shared/published/geodesy.cases.json' with { type: 'json' }
import oval from '../../shared/published/oval.cases.json' with { type: 'json' }
import safety from '../../shared/published/safety.cases.json' with { type: 'json' }
import water from '../../shared/published/water.cases.json' with { type: 'json' }
import earthSources from '../../shared/sources/earth.json' with { type: 'json' }
import safetySources from '../../shared/sources/safety.json' with { type: 'json' }
import waterSources from '../../shared/sources/water.json' with { type: 'json' }
import type { Case } from './case.ts'
import { isReached } from './check-cases.ts'

const cases = [earth, geodesy, oval, safety, water].flat() as unknown as readonly Case[]
const sources: readonly { readonly id: string; readonly note?: string }[] = [
  ...earthSources,
  ...safetySources,
  ...waterSources,
]

it('checks nothing that no manual shows', () => {
  const unreached = new Set(cases.filter((c) => !isReached(c)).map((c) => c.checks))
  expect([...unreached]).toEqual([])
})

it('has each check once', () => {
  const ids = cases.map((c) => c.id)
  expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([])
})

it('says in which table, example or clause a published value stands', () => {
  const published = cases.filter((c) => c.authority === 'public' || c.authority === 'book')
  expect(published.filter((c) => c.where === undefined).map((c) => c.id)).toEqual([])
})

it('cites publications, and keeps to itself how they were found', () => {
  const told = [
    ...cases.flatMap((c) => [c.source, c.where, c.quoted_by, c.tolerance_why]),
    ...sources.map((s) => s.note),
  ]
  const working = /recalled|memory|\bread\b|\bseen\b|\bstored\b|code search|second-hand/i
  expect(told.filter((text) => text !== undefined && working.test(text))).toEqual([])
})
