import { readFile } from 'node:fs/promises'
import path from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { joined, type Kept, written } from '../../../src/browser/records/kept.ts'
import { readBack } from '../../../src/browser/records/read-back.ts'
import { savedAll, savedTables } from '../../../src/browser/records/tables.ts'
import { addDays } from '../../../src/model/day.ts'
import { date, demoFolder } from '../../support/demo.ts'

const keptIn = (text: string): Kept => {
  const read = readBack(text, 'us', date)
  if (!('kept' in read)) throw new Error(JSON.stringify(read))
  return read.kept
}

describe('a file that is read back', () => {
  it('of everything gives what was kept, whatever was written', () => {
    const entry = fc.tuple(
      fc.integer({ min: 0, max: 50 }).map((n) => addDays('2027-05-01', n)),
      fc.constantFrom('seen', 'work', 'rain', 'moisture-log.row-2.wet', 'depth@0.000,1.524'),
      fc.string({ unit: 'grapheme', maxLength: 40 }),
    )
    fc.assert(
      fc.property(fc.array(entry, { maxLength: 30 }), (entries) => {
        const kept = entries.reduce<Kept>((k, [d, n, t]) => written(k, d, n, t), {})
        if (Object.keys(kept).length > 0) expect(keptIn(savedAll(kept))).toEqual(kept)
      }),
    )
  })

  it.each(['depths.csv', 'weather.csv'])(
    'can be %s of the facility folder, and goes back unchanged',
    async (file) => {
      const text = await readFile(path.join(demoFolder('larkmoor'), file), 'utf8')
      const saved = savedTables(keptIn(text), 'us', date).find((t) => t.file === file)
      const again = keptIn(saved?.text ?? '')
      expect(again).toEqual(keptIn(text))
      expect(saved?.left).toBe(0)
    },
  )

  it('holds nothing that a spreadsheet would work out, and gives back what was written', () => {
    const kept = { '2027-06-01': { seen: '=1+1', work: '- raked the gate' } }
    const all = savedAll(kept)
    const log = savedTables(kept, 'us', date).find((t) => t.file === 'log.csv')?.text ?? ''
    expect([all, log].join('\n')).not.toMatch(/(?:^|[,"])[=-][ 1]/m)
    expect(keptIn(all)).toEqual(kept)
    expect(keptIn(log)).toEqual(kept)
  })

  it('is refused with the words of the folder when it has faults, and when it is no table of ours', () => {
    expect(
      readBack('date,high (°F),low (°F),rain (in)\n2027-06-01,60,80,0\n', 'us', date),
    ).toMatchObject({
      problems: [{ message: 'the high is below the low' }],
    })
    expect(readBack('name,phone\nSomebody,555\n', 'us', date)).toEqual({ unknown: true })
  })

  it('changes nothing that stands here, and says how much differs', () => {
    const here = { '2027-06-01': { rain: '0.1 in' } }
    const more = { '2027-06-01': { rain: '0.2 in', high: '80 °F' } }
    expect(joined(here, more)).toEqual({
      kept: { '2027-06-01': { rain: '0.1 in', high: '80 °F' } },
      differ: 1,
    })
  })
})
