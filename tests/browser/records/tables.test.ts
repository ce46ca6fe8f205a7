import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Kept, rowName, written } from '../../../src/browser/records/kept.ts'
import { sampleForm, savedTables } from '../../../src/browser/records/tables.ts'
import { loadFacility } from '../../../src/cli/load/load-facility.ts'
import { addDays } from '../../../src/model/day.ts'
import { hasErrors } from '../../../src/model/problem.ts'
import { depthName } from '../../../src/model/records.ts'
import { date, demoFolder } from '../../support/demo.ts'

/** Texts of some days under their names. */
const keptOf = (days: Readonly<Record<string, Readonly<Record<string, string>>>>): Kept =>
  Object.entries(days).reduce<Kept>(
    (kept, [day, texts]) =>
      Object.entries(texts).reduce((k, [name, text]) => written(k, day, name, text), kept),
    {},
  )

const foot = 0.3048
const season = keptOf({
  '2027-06-12': {
    high: '88 °F',
    low: '61 °F',
    rain: '0.2 in',
    use: 'training',
    loads: '8',
    stored: '290,000 gal',
    work: '6 to 8, harrowed\n8 to 9, watered',
    seen: '"cuppy" at the pole, says Somebody',
    [depthName(0, 5 * foot)]: '1 3/8 in',
    [depthName(0, 32 * foot)]: '1 1/4 in',
    [depthName(330 * foot, 5 * foot)]: '1 1/8 in',
    [depthName(330 * foot, 32 * foot)]: '30 mm',
    [depthName(660 * foot, 5 * foot)]: '1 in',
    [depthName(660 * foot, 32 * foot)]: '1 1/4 in',
    [rowName(sampleForm, 1, 'station')]: '600 ft',
    [rowName(sampleForm, 1, 'offset')]: '5 ft',
    [rowName(sampleForm, 1, 'wet')]: '120',
    [rowName(sampleForm, 1, 'dry')]: '114',
    [rowName(sampleForm, 1, 'jar')]: '20',
  },
  '2027-06-13': {
    high: '80 °F',
    low: '60 °F',
    rain: '0 in',
    [rowName(sampleForm, 1, 'moisture')]: '7 %',
  },
})

const textOf = (kept: Kept, file: string): string =>
  savedTables(kept, 'us', date).find((t) => t.file === file)?.text ?? ''

/** Larkmoor with what a phone saved in its folder. */
async function withSaved(kept: Kept) {
  const root = await mkdtemp(path.join(os.tmpdir(), 'phone-'))
  try {
    await cp(demoFolder('larkmoor'), root, { recursive: true })
    for (const { file, text } of savedTables(kept, 'us', date))
      await writeFile(path.join(root, file), text)
    const file = path.join(root, 'facility.yaml')
    const entries = 'moisture: { file: moisture.csv, by: Somebody }\ndaily-log: { file: log.csv }\n'
    await writeFile(file, `${await readFile(file, 'utf8')}\n${entries}`)
    return await loadFacility({ root, shown: '' }, { today: date, wanted: date })
  } finally {
    await rm(root, { recursive: true, force: true })
  }
}

describe('tables that a phone saves', () => {
  it('load in the facility folder and give the readings that were written', async () => {
    const { facility, problems } = await withSaved(season)
    expect(problems.filter((p) => p.severity === 'error')).toEqual([])
    const { surveys, weather, moisture, 'daily-log': log } = facility?.imported ?? {}
    const depths = surveys?.find((s) => s.of === 'cushion-depth')?.days.at(-1)
    expect(depths?.date).toBe('2027-06-12')
    expect(depths?.readings.map((r) => r.value)).toEqual(
      [1.375, 1.25, 1.125, 30 / 25.4, 1, 1.25].map((inches) => expect.closeTo(inches * 0.0254, 9)),
    )
    expect(depths?.readings.map((r) => r.station / foot)).toEqual(
      [0, 0, 330, 330, 660, 660].map((s) => expect.closeTo(s, 6)),
    )
    expect(weather?.[0]?.map((d) => [d.date, d.high, d.low, d.rain])).toEqual([
      // (°F + 459.67) × 5/9 (NIST SP 811, appendix B).
      ['2027-06-12', (88 + 459.67) / 1.8, (61 + 459.67) / 1.8, 0.2 * 0.0254].map((v) =>
        typeof v === 'number' ? expect.closeTo(v, 9) : v,
      ),
      ['2027-06-13', (80 + 459.67) / 1.8, (60 + 459.67) / 1.8, 0].map((v) =>
        typeof v === 'number' ? expect.closeTo(v, 9) : v,
      ),
    ])
    // 6 of 94 that are dry.
    expect(moisture?.[0]?.days).toEqual([
      { date: '2027-06-12', values: [expect.closeTo(0.064, 9)] },
      { date: '2027-06-13', values: [expect.closeTo(0.07, 9)] },
    ])
    expect(log?.[0]).toMatchObject([
      {
        date: '2027-06-12',
        use: 'training',
        loads: 8,
        work: '6 to 8, harrowed; 8 to 9, watered',
        seen: '"cuppy" at the pole, says Somebody',
      },
    ])
  })

  it('leave out the days that the folder would refuse, and count them', () => {
    const kept = keptOf({
      '2027-06-10': { high: '60 °F', low: '88 °F', rain: '0 in' },
      '2027-06-11': { high: '80 °F', rain: '0 in' },
      '2027-06-12': { high: '80 °F', low: '60 °F', rain: '0 in', [depthName(0, 1.5)]: '1 in' },
    })
    const counts = savedTables(kept, 'us', date).map((t) => [t.name, t.days, t.left])
    expect(counts).toEqual([
      ['weather', 1, 2],
      ['depths', 0, 1],
      ['moisture', 0, 0],
      ['log', 0, 0],
    ])
    expect(textOf(kept, 'weather.csv').trim().split('\n')).toHaveLength(2)
  })

  it('are read by the folder without an error, whatever was typed', () => {
    const name = fc.constantFrom(
      'high',
      'low',
      'rain',
      'wind',
      'loads',
      'stored',
      'use',
      'work',
      depthName(0, 1.5),
      depthName(0, 9),
      depthName(100, 1.5),
      depthName(100, 9),
      depthName(200, 1.5),
      depthName(200, 9),
      rowName(sampleForm, 1, 'moisture'),
      rowName(sampleForm, 2, 'moisture'),
      rowName(sampleForm, 1, 'station'),
    )
    const text = fc.oneof(
      fc.constantFrom(
        '1 3/8 in',
        '80 °F',
        '60 °F',
        '0.3 in',
        '8',
        '7 %',
        '600 ft',
        '3 mm',
        '2,000 gal',
      ),
      fc.string({ maxLength: 12 }),
    )
    const day = fc.integer({ min: -40, max: 3 }).map((n) => addDays(date, n))
    fc.assert(
      fc.property(fc.array(fc.tuple(day, name, text), { maxLength: 60 }), (entries) => {
        const kept = entries.reduce<Kept>((k, [d, n, t]) => written(k, d, n, t), {})
        for (const table of savedTables(kept, 'us', date))
          if (table.days > 0) expect(hasErrors(table.problems), table.text).toBe(false)
      }),
      { numRuns: 200 },
    )
  })
})
