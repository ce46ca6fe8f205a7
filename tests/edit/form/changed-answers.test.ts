import { expect, it } from 'vitest'
import { changedAnswers } from '../../../src/edit/form/changed-answers.ts'

const paths = (before: unknown, after: unknown): readonly string[] =>
  changedAnswers(before, after).map((path) => path.join('.'))

it('counts what was said anew, otherwise, or no longer', () => {
  const before = { name: 'A', oval: { lap: '2640 ft' }, contacts: [{ role: 'fire', phone: '1' }] }
  expect(paths(before, before)).toEqual([])
  expect(paths({}, before)).toEqual(['name', 'oval.lap', 'contacts.0.role', 'contacts.0.phone'])
  expect(paths(before, { ...before, name: 'B' })).toEqual(['name'])
  expect(paths(before, { ...before, oval: {} })).toEqual(['oval.lap'])
  expect(paths({ ...before, oval: null }, before)).toEqual(['oval.lap'])
})

it('takes a list of texts as one answer', () => {
  expect(paths({ roles: ['a'] }, { roles: ['a', 'b'] })).toEqual(['roles'])
  expect(paths({}, { roles: ['a', 'b'] })).toEqual(['roles'])
})
