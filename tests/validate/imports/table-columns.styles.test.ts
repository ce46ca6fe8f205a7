import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { readRecords } from '../../../src/read/csv-fields.ts'
import { namedSheet } from '../../../src/read/named-sheet.ts'
import { readSurvey } from '../../../src/validate/imports/survey-table.ts'
import { readWeather } from '../../../src/validate/imports/weather-table.ts'
import { demoFolder } from '../../support/demo.ts'
import { rawWorkbook, textSheet } from '../../support/workbooks.ts'

const at = { file: 'facility.yaml', line: 1, column: 1, length: 1 }
const survey = { of: 'cushion-depth', by: 'somebody' } as const
const depths = await readFile(path.join(demoFolder('larkmoor'), 'depths.csv'), 'utf8')
const weather = await readFile(path.join(demoFolder('larkmoor'), 'weather.csv'), 'utf8')

const cells = (text: string): string[][] =>
  readRecords(text)
    .records.map((record) => record.map((field) => field.text))
    .filter((record) => record.length > 1)

const quoted = (text: string, delimiter: string): string =>
  text.includes(delimiter) || text.includes('"') ? `"${text.replaceAll('"', '""')}"` : text

const written = (rows: readonly (readonly string[])[], delimiter: string): string =>
  rows.map((row) => row.map((text) => quoted(text, delimiter)).join(delimiter)).join('\r\n')

const delimiters = [',', ';', '\t', '|'] as const
const marks = { point: (n: string) => n, comma: (n: string) => n.replace('.', ',') } as const
const days = {
  ISO: (d: string) => d,
  US: (d: string) => `${Number(d.slice(5, 7))}/${Number(d.slice(8))}/${d.slice(0, 4)}`,
  'of Europe': (d: string) => `${d.slice(8)}.${d.slice(5, 7)}.${d.slice(0, 4)}`,
  'in words': (d: string) =>
    new Date(`${d}T00:00:00Z`).toLocaleDateString('en-US', {
      day: 'numeric',
      month: 'long',
      year: 'numeric',
      timeZone: 'UTC',
    }),
} as const

const styled = (
  text: string,
  mark: (n: string) => string,
  day: (d: string) => string,
): string[][] =>
  cells(text).map((row, i) =>
    i === 0
      ? row
      : row.map((cell) =>
          /^\d{4}-\d\d-\d\d$/.test(cell)
            ? day(cell)
            : /^-?\d*\.\d+$/.test(cell)
              ? mark(cell)
              : cell,
        ),
  )

const context = { at, date: '2027-06-14', units: 'us', latitude: 40.83 } as const
const readDepths = (text: string) => readSurvey({ path: 'depths.csv', text }, survey, context)
const readDays = (text: string) => readWeather({ path: 'weather.csv', text }, context)

describe('tables of a demo say the same', () => {
  const plainDepths = readDepths(depths)
  const plainDays = readDays(weather)

  for (const delimiter of delimiters)
    for (const [mark, number] of Object.entries(marks))
      for (const [style, day] of Object.entries(days))
        it(`parted by ${JSON.stringify(delimiter)}, with a decimal ${mark} and dates ${style}`, () => {
          const surveyed = readDepths(written(styled(depths, number, day), delimiter))
          expect(surveyed.problems.filter((p) => p.severity === 'error')).toEqual([])
          expect(surveyed.value?.days).toEqual(plainDepths.value?.days)
          const seen = readDays(written(styled(weather, number, day), delimiter))
          expect(seen.value).toEqual(plainDays.value)
        })

  it('as a sheet of a workbook, as words or as numbers', () => {
    const sheet = textSheet('Depths', cells(depths))
    const words = namedSheet('d.xlsx', rawWorkbook([sheet]), undefined).value
    expect(words && readSurvey(words, survey, context).value?.days).toEqual(plainDepths.value?.days)
    const numbers = sheet.rows.replace(
      /t="inlineStr"><is><t>(-?\d*\.?\d+)<\/t><\/is>/g,
      '><v>$1</v>',
    )
    const bytes = rawWorkbook([
      textSheet('Read me', [['about']]),
      { name: 'Depths', rows: numbers },
    ])
    const read = namedSheet('d.xlsx', bytes, ' depths').value
    expect(read && readSurvey(read, survey, context).value?.days).toEqual(plainDepths.value?.days)
  })
})

describe('faults of a sheet', () => {
  const rows = [
    ['station (ft)', 'offset (ft)', 'depth (in)', 'date'],
    ['0', '3', '1 1/4', '2027-06-12'],
    [],
    ['100', '3', 'soft', '2027-06-12'],
    ['200', '', '1', '6/31/2027'],
  ]
  const faults = (bytes: Uint8Array) => {
    const file = namedSheet('my-fair/d.xlsx', bytes, undefined)
    return file.value ? readSurvey(file.value, survey, context).problems : file.problems
  }

  it('are told with sheet, cell and the row, with the fault underlined', () => {
    const problems = faults(rawWorkbook([textSheet('June', rows)]))
    expect(problems.map((p) => [p.place.cell, p.source])).toEqual([
      [{ sheet: 'June', name: 'C4' }, '100 | 3 | soft | 2027-06-12'],
      [{ sheet: 'June', name: 'B5' }, '200 |  | 1 | 6/31/2027'],
      [{ sheet: 'June', name: 'D5' }, '200 |  | 1 | 6/31/2027'],
    ])
    for (const { place, source = '' } of problems)
      expect(source.slice(place.column - 1, place.column - 1 + place.length)).toBe(
        { C4: 'soft', B5: ' ', D5: '6/31/2027' }[place.cell?.name ?? ''],
      )
  })

  it('stand in columns without a head and in formulas without a result, too', () => {
    const stray = faults(rawWorkbook([textSheet('June', [...rows, ['1', '2', '3', '', 'wet']])]))
    expect(stray).toMatchObject([{ place: { cell: { name: 'E6' } }, code: 'schema/format' }])
    const formulas = `${textSheet('June', rows.slice(0, 2)).rows}<row r="3"><c r="A3"><v>1</v></c><c r="B3" t="e"><f>1/0</f><v>#DIV/0!</v></c><c r="C3"><f>B3</f></c></row>`
    expect(faults(rawWorkbook([{ name: 'June', rows: formulas }]))).toMatchObject([
      { place: { cell: { name: 'B3' } }, message: 'the formula here has no result: #DIV/0!' },
      { place: { cell: { name: 'C3' } }, message: 'a formula stands here without its result' },
    ])
  })

  it('are a sheet that is not there, and a workbook with nothing in it', () => {
    const bytes = rawWorkbook([textSheet('June', []), textSheet('July', [])])
    expect(namedSheet('d.xlsx', bytes, 'May').problems).toMatchObject([
      { message: 'the workbook has no sheet "May"', hint: 'it has "June", "July"' },
    ])
    expect(namedSheet('d.xlsx', bytes, undefined).problems).toMatchObject([{ code: 'file/empty' }])
  })
})
