import * as fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import { baseFor } from '../../../src/cli/workbook/standing.ts'
import { layOut } from '../../../src/edit/workbook/lay-out.ts'
import { takeIn } from '../../../src/edit/workbook/take-in.ts'
import { hasErrors } from '../../../src/model/problem.ts'
import { readYaml } from '../../../src/read/read-yaml.ts'
import { checkFacility } from '../../../src/validate/check-facility.ts'
import { demoStanding } from '../../support/filled-workbooks.ts'
import { rawWorkbook, textSheet } from '../../support/workbooks.ts'

/** What people and keyboards put into cells. */
const junk = fc.oneof(
  fc.constantFrom(
    '',
    '-',
    'n/a',
    '?',
    '12',
    '1,250',
    '1.250',
    '3/4/2027',
    '2 1/2 in',
    'yes',
    '65 ft',
  ),
  fc.constantFrom(
    'a: b',
    '# note',
    '"911"',
    "it's",
    '{ a }',
    '[x',
    '&b',
    '*c',
    '!d',
    '%',
    '@e',
    '`',
    '- f',
    '{grade.time}',
  ),
  fc.constantFrom(
    'two\nlines',
    'tab\there',
    ' spaces ',
    'null',
    'true',
    '~',
    '1e3',
    '=1+1',
    '09:30',
    'ü €',
  ),
  fc.string({ maxLength: 12, unit: 'grapheme-ascii' }),
)

type Rows = { readonly title: string; readonly rows: string[][] }
let standing: Awaited<ReturnType<typeof demoStanding>>
let sheets: readonly Rows[]
beforeAll(async () => {
  standing = await demoStanding('brambleford')
  sheets = layOut(baseFor(standing), 'metric', standing.procedures).sheets.map(
    ({ title, rows }) => ({
      title,
      rows: rows.map((row) => row.map((cell) => cell?.text ?? '')),
    }),
  )
})

describe('whatever stands in the cells of a workbook', () => {
  it('is read without an error of the program, and what is taken in is a sound facility', () => {
    const cell = fc.tuple(fc.nat(), fc.nat(), fc.nat(), junk)
    fc.assert(
      fc.property(fc.array(cell, { minLength: 1, maxLength: 12 }), (typed) => {
        const changed = sheets.map((s) => ({ title: s.title, rows: s.rows.map((r) => [...r]) }))
        for (const [s, r, c, text] of typed) {
          const rows = changed[s % (changed.length - 2)]?.rows ?? []
          const row = rows[r % rows.length] ?? []
          row[c % Math.max(1, Math.min(8, row.length))] = text
        }
        const bytes = rawWorkbook(changed.map((s) => textSheet(s.title, s.rows)))
        const taken = takeIn({ name: 'facility.xlsx', bytes, text: undefined }, standing)
        if (taken.text === undefined) {
          expect(taken.problems.length).toBeGreaterThan(0)
          return
        }
        const tree = readYaml({ path: 'facility.yaml', text: taken.text }).value
        expect(tree && hasErrors(checkFacility(tree).problems)).toBe(false)
      }),
      { numRuns: 12 },
    )
  })
})
