import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { baseFor } from '../../../src/cli/workbook/standing.ts'
import { readCsv } from '../../../src/read/read-csv.ts'
import { demos } from '../../support/demo.ts'
import {
  demoStanding,
  demoText,
  fewestAnswers,
  filledIn,
  nowhere,
  retyped,
  standingOf,
  takeWorkbook,
  told,
} from '../../support/filled-workbooks.ts'

/** Lines of a text that another has not. */
const changedLines = (before: string, after: string): string[] => {
  const known = new Set(before.split('\n'))
  return after.split('\n').filter((line) => !known.has(line))
}

describe.each(demos)('the workbook of %s', (id) => {
  it('changes nothing of it where nobody has typed', async () => {
    const taken = await retyped(id, [])
    expect(told(taken).filter((t) => !t.includes('year'))).toEqual([])
    expect({ asked: taken.asked, tables: taken.tables }).toEqual({ asked: [], tables: [] })
    expect(taken.text).toBe(await demoText(id))
    expect(taken.counted.reduce((sum, c) => sum + c.not, 0)).toBe(0)
  })

  it('makes the same facility from nothing, tables included', async () => {
    const standing = await demoStanding(id)
    const bytes = await filledIn(baseFor(standing), 'us', [])
    const taken = takeWorkbook(bytes, nowhere)
    expect(told(taken)).toEqual([])
    expect(parse(taken.text ?? '')).toEqual(parse(await demoText(id)))
    const texts = Object.values(standing.tables.texts)
    const made = taken.tables.map(({ file, text }) => readCsv({ path: file, text }).value)
    expect(made.map((t) => t && [t.head, ...t.rows].map((row) => row.map((c) => c.text)))).toEqual(
      texts,
    )
  })
})

describe('a filled workbook', () => {
  it('changes the lines that it differs in, and leaves every other byte', async () => {
    const taken = await retyped('larkmoor', [
      { sheet: 'Prices', at: 'prices.fuel', text: '$4.30/gal' },
      { sheet: 'Oval', at: 'oval.width.turns', text: '72 ft' },
      { sheet: 'People to call', at: 'telephone', line: 1, text: '555-0199' },
      { sheet: 'Race days', at: 'day', line: 3, text: 'August 7, 2027' },
      { sheet: 'Race days', at: 'first post', line: 3, text: '13:00' },
      { sheet: 'Race days', at: 'races', line: 3, text: '8' },
      { sheet: 'Fair', at: 'revision', text: '4' },
      { sheet: 'Emergency', at: 'emergency.stops-racing', text: 'Presiding judge' },
    ])
    expect(told(taken)).toEqual([])
    expect(changedLines(await demoText('larkmoor'), taken.text ?? '')).toEqual([
      'revision: 4',
      '    turns: 72 ft',
      '  fuel: $4.30/gal',
      '  - { date: 2027-08-07, first-post: "13:00", races: 8 }',
      '  - { role: president, name: Harlan Voss, phone: 555-0199 }',
      '  stops-racing: [presiding-judge]',
    ])
  })

  it('takes out what somebody has cleared, and only that', async () => {
    const heads = ['what they are there for', 'name', 'telephone', 'what one has to know']
    const taken = await retyped('larkmoor', [
      ...heads.map((at) => ({ sheet: 'People to call', at, line: 2, text: '' })),
      { sheet: 'Prices', at: 'prices.budget', text: '' },
    ])
    expect(told(taken)).toEqual([])
    const [before, after] = [parse(await demoText('larkmoor')), parse(taken.text ?? '')]
    expect(after).toEqual({
      ...before,
      contacts: before.contacts.filter((c: { role: string }) => c.role !== 'board'),
      prices: { ...before.prices, budget: undefined },
    })
  })

  it('writes a table anew, beside the file, where its readings differ', async () => {
    const taken = await retyped('larkmoor', [
      { sheet: 'Weather', at: 'high (°F)', line: 0, text: '81' },
      { sheet: 'Depths', at: 'read by', line: 0, text: 'P. Lindqvist' },
    ])
    expect(told(taken)).toEqual([])
    expect(taken.tables.map(({ file, readings }) => [file, readings])).toEqual([
      ['weather.csv', 30],
    ])
    expect(taken.tables[0]?.text).toContain('\n2027-05-15,81,59,')
    expect(changedLines(await demoText('larkmoor'), taken.text ?? '')).toEqual([
      '  - { of: cushion-depth, file: depths.csv, by: "P. Lindqvist, D. Hasterlin" }',
    ])
  })

  it('tells where the file was changed meanwhile, and takes the rest', async () => {
    const standing = await demoStanding('brambleford')
    const bytes = await filledIn(baseFor(standing), 'metric', [
      { sheet: 'Oval', at: 'oval.straight', text: '182 m' },
      { sheet: 'Oval', at: 'oval.radius', text: '69.5 m' },
    ])
    const later = standingOf((await demoText('brambleford')).replace('180 m', '181 m'))
    const taken = takeWorkbook(bytes, later)
    expect(told(taken)).toEqual([
      'Oval!B5: the facility says "181 m" here by now, and this workbook was made before that',
    ])
    expect(changedLines(await demoText('brambleford'), taken.text ?? '')).toEqual([
      '  straight: 181 m',
      '  radius: 69.5 m',
    ])
  })
})

describe('faults of a workbook', () => {
  it('are told with sheet and cell, and what they stand in is left as it is', async () => {
    const taken = await retyped('larkmoor', [
      { sheet: 'Oval', at: 'oval.width.straights', text: '65' },
      { sheet: 'Oval', at: 'oval.width.turns', text: '700 ft' },
      { sheet: 'Prices', at: 'prices.fuel', text: '4,10 $ or so' },
      { sheet: 'Fair', at: 'units', text: 'furlongs' },
      { sheet: 'Race days', at: 'day', line: 0, text: '2/30/2027' },
      { sheet: 'Race days', at: 'races', line: 1, text: 'plenty' },
      { sheet: 'People to call', at: 'what they are there for', line: 3, text: 'mayor' },
      { sheet: 'People to call', at: 'telephone', line: 4, text: 'none' },
      { sheet: 'Along the track', at: 'station', line: 0, text: '420' },
      { sheet: 'Machines', at: 'what it can do', line: 0, text: 'plow' },
      { sheet: 'Measurements', at: 'what was measured', line: 0, text: 'mood' },
      { sheet: 'Depths', at: 'depth (in)', line: 2, text: 'soft' },
      { sheet: 'Water and crew', at: 'crew.people', text: '4' },
    ])
    const cells = taken.problems
      .filter((p) => p.severity === 'error')
      .map((p) => `${p.place.cell?.sheet}!${p.place.cell?.name}`)
    expect([...new Set(cells)].sort()).toEqual([
      'Depths!D7',
      'Fair!B11',
      'Machines!D5',
      'Measurements!B5',
      'Oval!B18',
      'People to call!B8',
      'People to call!D9',
      'Prices!B7',
      'Race days!B5',
      'Race days!D6',
    ])
    // What can be read is taken in all the same, and nothing is taken for cleared.
    expect(changedLines(await demoText('larkmoor'), taken.text ?? '')).toEqual(['  people: 4'])
    expect(taken.counted.filter((c) => c.not > 0).map((c) => [c.name, c.read, c.not])).toEqual([
      ['Fair', 14, 1],
      ['People to call', 13, 2],
      ['Oval', 14, 1],
      ['Race days', 1, 2],
      ['Machines', 7, 1],
      ['Prices', 7, 1],
      ['Measurements', 6, 1],
      ['Depths', 47, 1],
    ])
  })

  it('take in the rest of a line, and a number without its unit in the usual one', async () => {
    const taken = await retyped('larkmoor', [
      { sheet: 'Machines', at: 'working width', line: 0, text: 'wide' },
      { sheet: 'Machines', at: 'working speed', line: 0, text: '4' },
      { sheet: 'Race days', at: 'time from race to race', line: 0, text: '22' },
      { sheet: 'Prices', at: 'prices.fuel', text: '3.89' },
      { sheet: 'Cushion and base', at: 'cushion.moisture.target', text: '0.08' },
    ])
    const errors = taken.problems.filter((p) => p.severity === 'error')
    expect(errors.map((p) => `${p.place.cell?.sheet}!${p.place.cell?.name}`)).toEqual([
      'Machines!J5',
      'Cushion and base!B15',
    ])
    expect(errors[1]?.hint).toBe('write it with its unit: 8 %, or 0.08 % where it is so little')
    expect(taken.asked.map(({ path, value }) => [path.join('.'), value])).toEqual([
      ['prices.fuel', '$3.89/gal'],
      ['race-days.0.interval', '22 min'],
      ['equipment.0.speed', '4 mph'],
    ])
    expect(taken.problems.filter((p) => p.severity === 'warning').map((p) => p.message)).toEqual([
      '22 is entered as 22 min',
      '4 is entered as 4 mph',
      '3.89 is entered as $3.89/gal',
    ])
  })

  it('take a day without its year in the year of the fair, and tell', async () => {
    const taken = await retyped('larkmoor', [
      { sheet: 'Race days', at: 'day', line: 2, text: 'Aug 13' },
    ])
    expect(taken.asked.map(({ value }) => value)).toContainEqual(
      expect.objectContaining({ date: '2027-08-13', races: 9 }),
    )
    expect(told(taken)).toEqual(['Race days!B7: Aug 13 is entered as 2027-08-13'])
  })

  it('are told of empty cells that somebody must fill in, in the words of a workbook', async () => {
    const taken = await retyped('larkmoor', [
      { sheet: 'People to call', at: 'name', line: 15, text: 'Mo Somebody' },
    ])
    expect(told(taken)).toEqual([
      'People to call!B20: "what they are there for" is missing',
      'People to call!D20: "telephone" is missing',
    ])
    expect(taken.problems[1]?.hint).toBe(
      'write the telephone (one number, as it is dialed from the grounds)',
    )
    expect(taken.asked).toEqual([])
  })

  it('leave nothing to take in where a new facility lacks what it cannot do without', async () => {
    const bytes = await filledIn({ data: {}, tables: {} }, 'us', [
      { sheet: 'Fair', at: 'name', text: 'Our County Fair' },
    ])
    const taken = takeWorkbook(bytes, nowhere)
    expect(taken.text).toBeUndefined()
    expect(told(taken)).toContain('Fair!B11: "units of the manual" is missing')
  })
})

describe('a facility from nothing, by the blank workbook alone', () => {
  it('is whole with a dozen answers, its short names made of its names', async () => {
    const bytes = await filledIn({ data: {}, tables: {} }, 'metric', [
      ...fewestAnswers({
        name: 'Södra Kärr Fair',
        town: 'Kärr',
        units: 'metric',
        paper: 'a4',
        lap: '804,7 m',
        straight: '180 m',
        material: 'clay',
      }),
      { sheet: 'Machines', at: 'what people call it', line: 0, text: 'The old harrow' },
      { sheet: 'Machines', at: 'what it can do', line: 0, text: 'harrow; draw' },
      { sheet: 'Machines', at: 'whose it is', line: 0, text: 'own' },
      { sheet: 'Machines', at: 'working width', line: 0, text: '2,4 m' },
      { sheet: 'Race days', at: 'day', line: 0, text: '11.9.2027' },
      { sheet: 'Race days', at: 'first post', line: 0, text: '13:30' },
      { sheet: 'Race days', at: 'races', line: 0, text: '6' },
      { sheet: 'Emergency', at: 'emergency.number', text: '911' },
    ])
    const taken = takeWorkbook(bytes, nowhere)
    expect(taken.problems.filter((p) => p.severity === 'error')).toEqual([])
    expect(parse(taken.text ?? '')).toEqual({
      id: 'sodra-karr-fair',
      name: 'Södra Kärr Fair',
      place: { town: 'Kärr' },
      units: 'metric',
      paper: 'a4',
      oval: { lap: '804.7 m', straight: '180 m' },
      cushion: { material: 'clay' },
      equipment: [
        {
          id: 'the-old-harrow',
          name: 'The old harrow',
          can: ['harrow', 'draw'],
          from: 'own',
          width: '2.4 m',
        },
      ],
      'race-days': [{ date: '2027-09-11', 'first-post': '13:30', races: 6 }],
      emergency: { number: '911' },
    })
  })
})
