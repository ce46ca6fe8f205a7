import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { emptyTable, readingTable } from '../../../src/edit/readings/table.ts'
import { demoFolder } from '../../support/demo.ts'

const demo = (name: string): string => readFileSync(path.join(demoFolder('larkmoor'), name), 'utf8')

describe('a table of readings', () => {
  it('is read place by place, each with its line', () => {
    const table = readingTable(demo('depths.csv'), 'us')
    expect(table?.name).toBe('depth')
    expect(table?.readings).toHaveLength(48)
    expect(table?.readings[1]).toMatchObject({ date: '2027-05-15', typed: '1 3/8', line: 4 })
    expect(table?.lines[3]).toBe('0,32,1 3/8,2027-05-15')
    expect(readingTable(demo('levels.csv'), 'us')?.name).toBe('level')
  })

  it('says a reading with its unit where that is not the one of the fair', () => {
    const text = 'station (m),offset (m),depth (cm),date\n0,1,3.2,2027-05-15\n0,5,1 in,2027-05-15\n'
    expect(readingTable(text, 'metric')?.readings.map((r) => r.typed)).toEqual(['3.2 cm', '1 in'])
  })

  it('begins with its head alone', () => {
    for (const name of ['depth', 'level', 'staff reading'] as const)
      for (const system of ['us', 'metric'] as const) {
        const table = readingTable(emptyTable(name, system), system)
        expect(table).toMatchObject({ name, readings: [] })
      }
  })

  it.each([
    ['other columns', 'station (ft),offset (ft),date\n0,5,2027-05-15\n'],
    ['a row that is no reading', 'station (ft),offset (ft),depth (in),date\n0,5,deep,2027-05-15\n'],
    ['rows of other lengths', 'station (ft),offset (ft),depth (in),date\n0,5\n'],
    ['decimal commas', 'station (m);offset (m);depth (cm);date\n0;1,5;3,2;2027-05-15\n'],
    ['a cell over two lines', 'station (ft),offset (ft),depth (in),date\n0,5,1,"2027-\n05-15"\n'],
    ['nothing', ''],
  ])('is left to other programs with %s', (_, text) => {
    expect(readingTable(text, 'us')).toBeUndefined()
  })
})
