import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { loadManual } from '../../../src/cli/load/load-manual.ts'
import type { Manual } from '../../../src/model/manual.ts'
import { date, folders } from '../../support/demo.ts'

/** A fair in the north: on the second day work begins in the dark, and only the last takes a late crew. */
const text = `id: north
name: North Fair
place: { town: Nowhere, latitude: 61.2, longitude: -149.9, time-zone: America/Anchorage }
units: us
paper: letter
as-of: 2027-06-14
oval: { lap: 2640 ft, straight: 600 ft }
cushion: { material: stone-dust }
equipment:
  - { id: harrow, name: the harrow, can: [harrow], from: own, width: 8 ft }
crew: { people: 4, race-day: 5 }
race-days:
  - { date: 2027-10-03, first-post: "13:00", races: 12, interval: 15 min }
  - { date: 2027-10-04, first-post: "10:00", races: 2, interval: 15 min }
  - { date: 2027-10-06, first-post: "11:00", races: 10, interval: 60 min }
`

async function manual(): Promise<Manual> {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'facility-'))
  try {
    await writeFile(path.join(folder, 'facility.yaml'), text)
    const made = (await loadManual(folder, folders, date)).manual
    if (!made) throw new Error('the facility has faults')
    return made
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

const made = await manual()

const tables = (plan: string) => made.schedules.find(({ id }) => id === plan)?.tables ?? []

describe('rows that are there because of a finding', () => {
  it('stand on the race days of that finding alone', () => {
    const dark = tables('race-days')
      .filter(({ id }) => id.startsWith('race-day-clock'))
      .map(({ days, rows }) => [days, rows.some((cells) => cells.join().includes('It is dark'))])
    expect(dark).toEqual([
      ['Sun, Oct 3', false],
      ['Mon, Oct 4', true],
      ['Wed, Oct 6', false],
    ])
  })

  it('say the numbers of the day on which it holds', () => {
    const said = made.findings.find(({ id }) => id === 'rota-short')?.text
    expect(said).toMatch(/^Wed, Oct 6: People that it takes: 7; people on a race day: 5\./)
    const hired = tables('ten-days').flatMap(({ rows }) => rows.map(([what]) => what))
    expect(hired).toContain('People for the crew schedule: it takes 7, so far: 5')
  })
})
