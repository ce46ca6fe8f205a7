import { describe, expect, it } from 'vitest'
import { loadManual } from '../../../src/cli/load/load-manual.ts'
import { date, demoFolder, folders } from '../../support/demo.ts'
import { changedSmallManual } from '../../support/small.ts'

const load = (today: string, wanted?: string) =>
  loadManual(demoFolder('brambleford'), folders, today, wanted)

describe('the date of a manual', () => {
  it('is that to which the file is up to date, whatever the clock says', async () => {
    expect((await load('2031-01-01')).manual?.date).toBe('2027-06-14')
    expect((await load('2026-11-27')).problems).toEqual([])
  })

  it('is the one that somebody asks for, unless something was measured after it', async () => {
    expect((await load(date, '2027-08-20')).manual?.date).toBe('2027-08-20')
    const { manual, problems } = await load(date, '2027-06-01')
    expect(manual).toBeUndefined()
    expect(problems.map((p) => [p.code, p.message])).toEqual([
      ['facility/odd', expect.stringContaining('2027-06-05 is after 2027-06-01')],
    ])
  })

  it('is that of today where the file says nothing', async () => {
    const { manual } = await changedSmallManual((text) => text.replace(/^as-of:.*\n/m, ''))
    expect(manual.date).toBe(date)
  })
})
