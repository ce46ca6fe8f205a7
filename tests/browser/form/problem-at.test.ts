import { readFileSync } from 'node:fs'
import path from 'node:path'
import { expect, it } from 'vitest'
import { parse } from 'yaml'
import { type Known, problemAt } from '../../../src/browser/form/problem-at.ts'
import { questionsOf } from '../../../src/edit/form/question.ts'
import type { Problem } from '../../../src/model/problem.ts'
import { facility } from '../../../src/validate/schemas/facility.ts'
import { form } from '../../../src/validate/schemas/form.ts'
import { folders } from '../../support/demo.ts'

const said = form.parse(parse(readFileSync(path.join(folders.content, 'form.yaml'), 'utf8')))
const at = ['contacts', 2, 'phone'] as const

/** A sitting in which one problem was found. */
const sitting = (problem: Partial<Problem>): Known =>
  ({
    said: { form: said },
    questions: questionsOf(facility),
    locale: () => ({ system: 'us', currency: 'USD' }),
    worked: () => ({ problems: [{ path: at, ...problem }] }),
  }) as unknown as Known

const missing = sitting({
  code: 'schema/missing',
  message: '"phone" is missing in entry 3 of "contacts"',
  hint: 'add to what stands in { }: "phone: 555-0100"',
})

it('tells what is missing by its question, with no word of the file', () => {
  expect(problemAt(missing, at)).toBe('The answer to "Telephone" is missing.')
})

it('does not call missing what is typed there now', () => {
  expect(problemAt(missing, at, true)).toBeUndefined()
})

it('offers no advice that asks for braces, entries or quotes', () => {
  const braces = sitting({ code: 'schema/type', message: 'this is no text', hint: 'write { }' })
  expect(problemAt(braces, at)).toBe('The answer to "Telephone" does not fit yet.')
  const plain = sitting({ code: 'schema/format', message: 'this has no digit' })
  expect(problemAt(plain, at)).toBe('This has no digit')
})
