import { describe, expect, it } from 'vitest'
import { problemsText } from '../../src/cli/problem-text.ts'
import { placeInSheet, sheetFile } from '../../src/read/sheet-table.ts'
import { placeAt, problemAt } from '../../src/read/source-file.ts'

const file = { path: 'facility.yaml', text: 'oval:\n  lap: 20 galon\n\tlap: 1\n' }
const problem = (part: string, severity: 'error' | 'warning' = 'error') =>
  problemAt(
    file,
    placeAt(file, file.text.indexOf(part), part.length),
    'quantity/unknown-unit',
    `what is "${part}"`,
    { hint: 'did you mean "gal"?', severity },
  )
const text = (...problems: readonly ReturnType<typeof problem>[]): string =>
  problemsText(problems, (name) => `my-fair/${name}`, false)

describe('problems on the terminal', () => {
  it('show file, line and column, the line itself, a mark under the fault, and what to do', () => {
    expect(text(problem('galon'))).toBe(
      [
        'my-fair/facility.yaml:2:11: error: what is "galon" [quantity/unknown-unit]',
        '  2 |   lap: 20 galon',
        '    |           ^^^^^',
        '  did you mean "gal"?',
        '',
        '1 error, 0 warnings in 1 file',
      ].join('\n'),
    )
  })

  it('stand in the order of the file, and are summed up', () => {
    const said = text(problem('1', 'warning'), problem('galon'), problem('20'))
    expect([...said.matchAll(/yaml:(\d+:\d+)/g)].map((m) => m[1])).toEqual(['2:8', '2:11', '3:7'])
    expect(said).toContain('2 errors, 1 warning in 1 file')
  })

  it('keep tabs, so that the mark stands under the fault', () => {
    expect(text(problem('1'))).toContain('\n    | \t     ^\n')
  })
})

describe('a problem in a workbook', () => {
  it('is shown with sheet and cell, and the row of it', () => {
    const sheet = {
      name: 'Contacts',
      rows: [[{ text: 'role', kind: 'words', row: 2, column: 2 }]],
    } as const
    const workbook = sheetFile('contacts.xlsx', sheet)
    const place = placeInSheet(workbook, sheet.rows[0], { row: 2, column: 2 })
    expect(text(problemAt(workbook, place, 'schema/choice', 'no such role'))).toBe(
      [
        'my-fair/contacts.xlsx, sheet Contacts, cell B2: error: no such role [schema/choice]',
        '  2 |  | role',
        '    |    ^^^^',
        '',
        '1 error, 0 warnings in 1 file',
      ].join('\n'),
    )
  })
})
