import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { takeIn } from '../../../src/edit/workbook/take-in.ts'
import { demoText, standingOf, takeWorkbook, told } from '../../support/filled-workbooks.ts'
import { rawWorkbook, textSheet } from '../../support/workbooks.ts'

const brambleford = standingOf(await demoText('brambleford'))
const before = parse(await demoText('brambleford'))

const csv = (name: string, text: string) =>
  takeIn({ name, bytes: new Uint8Array(0), text }, brambleford)

const quoted = (cell: string, delimiter: string): string =>
  cell.includes(delimiter) ? `"${cell}"` : cell
const parted = (delimiter: string, rows: readonly (readonly string[])[]): string =>
  rows.map((row) => row.map((cell) => quoted(cell, delimiter)).join(delimiter)).join('\n')

const errors = (taken: ReturnType<typeof csv>) =>
  taken.problems.filter((p) => p.severity === 'error').map((p) => p.message)

describe.each([',', ';', '\t', '|'])('tables parted by %j', (delimiter) => {
  it('add people, and change those who are known by role and name', () => {
    const taken = csv(
      'contacts.csv',
      parted(delimiter, [
        ['Role', 'Name', 'Phone', 'Note'],
        ['superintendent', 'Theo Marchbank', '555-0199', ''],
        ['vet', 'Dr. Ada Quill', '555-0188', 'nights, weekends; at home'],
      ]),
    )
    expect(errors(taken)).toEqual([])
    expect(taken.counted).toEqual([{ name: 'contacts', read: 2, not: 0 }])
    expect(parse(taken.text ?? '').contacts).toEqual([
      { ...before.contacts[0], phone: '555-0199' },
      before.contacts[1],
      {
        role: 'veterinarian',
        name: 'Dr. Ada Quill',
        phone: '555-0188',
        note: 'nights, weekends; at home',
      },
    ])
  })

  it.each([
    ['2.4', '3,600', '2027-09-12'],
    ['2,4', '3.600,5', '12.9.2027'],
    ['2,4', '3600', '12 Sep 2027'],
    ['2.4', '3600', '13/9/2027'],
  ])('add machines and race days, as written %s, %s, %s', (width, tank, day) => {
    const machines = csv(
      'machines.csv',
      parted(delimiter, [
        ['id', 'name', 'can', 'from', 'working width (m)', 'tank (L)'],
        ['new-tanker', 'the new tanker', 'spray', 'own', width, tank],
      ]),
    )
    expect(errors(machines)).toEqual([])
    expect(parse(machines.text ?? '').equipment[2]).toMatchObject({
      width: '2.4 m',
      tank: tank === '3.600,5' ? '3600.5 L' : `${tank} L`,
    })
    const days = csv(
      'race-days.csv',
      parted(delimiter, [
        ['Date', 'First post', 'Races'],
        [day, '1:30 PM', '8'],
      ]),
    )
    expect(errors(days)).toEqual([])
    expect(parse(days.text ?? '')['race-days'][1]).toEqual({
      date: day.startsWith('13') ? '2027-09-13' : '2027-09-12',
      'first-post': '1:30 PM',
      races: 8,
    })
  })

  it('set prices, by name or as people call them', () => {
    const taken = csv(
      'prices.csv',
      parted(delimiter, [
        ['What', 'Price'],
        ['Price of fuel', '$1,50/L'],
        ['prices.labor', '$24/h'],
      ]),
    )
    expect(errors(taken)).toEqual([])
    expect(parse(taken.text ?? '')).toEqual({
      ...before,
      prices: { fuel: '$1.50/L', labor: '$24/h' },
    })
  })
})

describe('what can be read in two ways', () => {
  it('is asked, with its line, and the rest can be taken in', () => {
    const taken = csv(
      'machines.csv',
      'id;name;can;from;tank (L)\na;one;spray;own;1.250\nb;two;spray;own;900\n',
    )
    expect(taken.problems).toMatchObject([
      {
        message: '"1.250" can be 1250 or 1.250',
        place: { line: 2, column: 17 },
        source: 'a;one;spray;own;1.250',
      },
    ])
    expect(parse(taken.text ?? '').equipment.map((m: { id: string }) => m.id)).toEqual([
      'harrow',
      'tanker',
      'b',
    ])
    const days = csv('race-days.csv', 'date,first post,races\n3/4/2027,13:30,8\n')
    expect(errors(days)).toEqual(['"3/4/2027" can be 2027-03-04 or 2027-04-03'])
    expect(days.asked).toEqual([])
  })
})

describe('a workbook of somebody’s own', () => {
  it('is read by its titles and heads, with numbers and days as the program keeps them', () => {
    const number = (cell: string, style: number, value: string) =>
      `<c r="${cell}" s="${style}"><v>${value}</v></c>`
    const text = (cell: string, value: string) =>
      `<c r="${cell}" t="inlineStr"><is><t>${value}</t></is></c>`
    const rows = [
      `<row r="1">${text('A1', 'date')}${text('B1', 'first post')}${text('C1', 'races')}${text('D1', 'interval (min)')}</row>`,
      `<row r="2">${number('A2', 1, '46642')}${number('B2', 2, '0.5625')}${number('C2', 0, '8')}${number('D2', 0, '22')}</row>`,
    ].join('')
    const styles = '<cellXfs><xf numFmtId="0"/><xf numFmtId="14"/><xf numFmtId="20"/></cellXfs>'
    const phones = textSheet('Telephones', [
      ['who', 'name', 'phone'],
      ['fire', 'Town firemen', '5550123'],
    ])
    const kept = {
      ...phones,
      rows: phones.rows.replace(
        '<c r="C2" t="inlineStr"><is><t>5550123</t></is></c>',
        number('C2', 0, '5550123'),
      ),
    }
    const taken = takeWorkbook(
      rawWorkbook([{ name: 'Sheet1', rows }, kept], { styles }),
      brambleford,
    )
    expect(parse(taken.text ?? '')['race-days'][1]).toEqual({
      date: '2027-09-12',
      'first-post': '13:30',
      races: 8,
      interval: '22 min',
    })
    expect(told(taken)).toContain('Telephones!C2: this telephone was kept as a number')
  })

  it('adds a second survey beside the first, and never writes over a record', async () => {
    const larkmoor = standingOf(await demoText('larkmoor'))
    const depths = [
      ['station (ft)', 'offset (ft)', 'depth (in)', 'date', 'read by'],
      ...[0, 100, 200].flatMap((s) =>
        [3, 20].map((o) => [`${s}`, `${o}`, '1 1/4', '6/13/2027', 'Mo']),
      ),
    ]
    const taken = takeWorkbook(rawWorkbook([textSheet('Depths', depths)]), {
      ...larkmoor,
      tables: { texts: {}, files: ['depths.csv'] },
    })
    expect(told(taken)).toEqual([])
    expect(taken.tables.map((t) => [t.file, t.readings])).toEqual([['depths-2.csv', 6]])
    expect(parse(taken.text ?? '').surveys[2]).toEqual({
      of: 'cushion-depth',
      file: 'depths-2.csv',
      by: 'Mo',
    })
    const weather = textSheet('Weather', [
      ['date', 'high (°F)', 'low (°F)', 'rain (in)'],
      ['2027-06-13', '80', '60', '0'],
    ])
    expect(told(takeWorkbook(rawWorkbook([weather]), larkmoor))).toEqual([
      'Weather!A1: the facility has this table already, as weather.csv',
    ])
  })

  it('is told where nobody can tell what a sheet or a column is about', () => {
    const sheets = [
      textSheet('Sheet1', [
        ['wish', 'cost'],
        ['a pony', '12'],
      ]),
      textSheet('Contacts', [
        ['role', 'name', 'telefone', 'shoe size'],
        ['fire', 'Us', '555-0100', '9'],
      ]),
    ]
    const taken = takeWorkbook(rawWorkbook(sheets), brambleford)
    expect(told(taken)).toEqual([
      'Sheet1!A1: nobody can tell what "Sheet1" is about',
      'Contacts!C1: unknown column "telefone"',
      'Contacts!D1: unknown column "shoe size"',
      'Contacts!A2: "telephone" is missing',
    ])
    expect(taken.problems[1]?.hint).toBe('did you mean "telephone"?')
  })
})
