import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { loadManual } from '../../../src/cli/load/load-manual.ts'
import type { Manual } from '../../../src/model/manual.ts'
import { date, demoFolder, demoManual, demos, folders } from '../../support/demo.ts'

/** What the countdown says of evening out. */
const eveningOut = (manual: Manual): readonly string[] =>
  manual.schedules
    .filter((s) => s.id === 'countdown')
    .flatMap((s) => s.tables.flatMap((t) => t.rows.map((r) => r[1] ?? '')))
    .filter((text) => text.startsWith('Even out'))

/** Larkmoor, with each reading of its last survey as wanted or far too deep. */
async function nowhereThin(): Promise<Manual | undefined> {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'facility-'))
  try {
    await cp(demoFolder('larkmoor'), folder, { recursive: true })
    const file = path.join(folder, 'depths.csv')
    let deep = false
    const lines = (await readFile(file, 'utf8')).split('\n').map((line) => {
      if (!line.endsWith('2027-06-12')) return line
      deep = !deep
      const [station, offset] = line.split(',')
      return [station, offset, deep ? '2 1/2' : '1 1/4', '2027-06-12'].join()
    })
    await writeFile(file, lines.join('\n'))
    return (await loadManual(folder, folders, date)).manual
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

describe('material that is moved', () => {
  it('is spoken of in the countdown only where some place has too little', async () => {
    expect(eveningOut((await demoManual('larkmoor')).manual)).toHaveLength(1)
    const altered = await nowhereThin()
    expect(altered?.findings.map((f) => f.id)).toContain('uneven')
    expect(altered && eveningOut(altered)).toEqual([])
  })

  it.each(demos)('rests in the last two of the ten days at %s', async (id) => {
    const { manual } = await demoManual(id)
    const plan = manual.schedules.find((s) => s.id === 'ten-days')
    const rows = plan?.tables.find((t) => t.id === 'ten-days')?.rows ?? []
    let day = 0
    for (const [head = '', work = ''] of rows) {
      if (head !== '') day = Number.parseInt(head, 10)
      if (/^(\[Move|Rake the build-up)/.test(work)) expect(day, work).toBeLessThanOrEqual(8)
    }
    expect(day).toBe(10)
  })

  it.each(demos)('is harrowed at %s only with teeth that were set before', async (id) => {
    const { manual } = await demoManual(id)
    const plan = manual.schedules.find((s) => s.id === 'ten-days')
    const table = (name: string) => plan?.tables.find((t) => t.id === name)?.rows ?? []
    const from = Number(table('ten-days-daily').find((r) => r[0]?.startsWith('[Harrow]'))?.[1])
    let day = 0
    let set = Number.NaN
    for (const [head = '', work = ''] of table('ten-days')) {
      if (head !== '') day = Number.parseInt(head, 10)
      if (work.startsWith('[Set the teeth]')) set = day
    }
    expect(set).toBeLessThan(from)
  })
})
