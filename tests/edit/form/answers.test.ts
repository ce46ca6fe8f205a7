import { expect, it } from 'vitest'
import { answerChanges, folderName, personChanges } from '../../../src/edit/form/answers.ts'
import { answered, type Draft, draftOf } from '../../../src/edit/form/draft.ts'
import { type Question, questionAt, questionsOf } from '../../../src/edit/form/question.ts'
import { understand } from '../../../src/edit/form/understand.ts'
import type { Change } from '../../../src/edit/splice.ts'
import type { Path } from '../../../src/read/read-yaml.ts'
import { facility } from '../../../src/validate/schemas/facility.ts'
import { workHere } from '../../answers/support/work.ts'

const questions = questionsOf(facility)
const locale = { system: 'us', currency: 'USD' } as const

function put(draft: Draft, changes: readonly Change[]): Draft {
  const made = answered(draft, changes, '')
  if (!made.ok) throw new Error(made.why)
  return made.draft
}

/** The draft with something typed into the field of an entry. */
function typing(draft: Draft, at: Path, typed: string): Draft {
  const question = questionAt(questions, at) as Question
  const { value, fault } = understand({ question, at, locale, copied: 'copied' }, typed)
  expect(fault).toBeUndefined()
  return put(draft, answerChanges(draft.data, at, value))
}

it('the first twelve answers suffice for a manual', async () => {
  let draft = draftOf('')
  for (const [at, typed] of [
    [['emergency', 'number'], '911'],
    [['emergency', 'address'], '12 Mill Road'],
    [['emergency', 'gate'], 'Gate A'],
    [['name'], 'Our Fair'],
    [['place', 'town'], 'Hollow Creek'],
    [['units'], 'us'],
    [['oval', 'lap'], '2640'],
    [['oval', 'straight'], '600'],
    [['cushion', 'material'], 'stone-dust'],
    [['race-days', 0, 'date'], 'August 3, 2027'],
    [['race-days', 0, 'first-post'], '1 pm'],
    [['race-days', 0, 'races'], '10'],
  ] as const)
    draft = typing(draft, at, typed)
  for (const role of ['ambulance', 'superintendent', 'veterinarian'] as const)
    for (const [field, value] of [
      ['name', 'Pat Roe'],
      ['phone', '217-0100'],
    ] as const)
      draft = put(draft, personChanges(draft.data, role, field, value, role === 'superintendent'))
  const worked = (await workHere())(new Map([['facility.yaml', draft.text]]))
  expect(worked.problems.filter((p) => p.severity === 'error')).toEqual([])
  expect(worked.standIns).toEqual([])
  expect(worked.leftOut).toEqual([])
  expect(worked.manual?.procedures.length).toBeGreaterThan(35)
  expect(worked.manual?.figures.length).toBeGreaterThan(90)
  expect(worked.manual?.emergency).toBeDefined()
})

it.each([
  ['Our Fair & Races', 'our-fair-races'],
  ['  4th of July Fair ', 'th-of-july-fair'],
  ['Foire de Saint-Éloi', 'foire-de-saint-eloi'],
  ['!!!', ''],
])('the folder of %s is called %s', (name, folder) => expect(folderName(name)).toBe(folder))
