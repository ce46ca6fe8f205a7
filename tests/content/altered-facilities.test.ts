import { beforeAll, describe, expect, it } from 'vitest'
import { alterations, saidOf, saidOfAltered } from '../support/altered.ts'
import { demos } from '../support/demo.ts'

const rows = await alterations()

/** What is said of the demos as they stand. */
const before = new Map<string, Awaited<ReturnType<typeof saidOf>>>()
beforeAll(async () => {
  for (const demo of demos) before.set(demo, await saidOf(demo))
})

describe('a value that is absurd', () => {
  it('is one of many, none of which anything is said of in the demos as they stand', () => {
    expect(rows.length).toBeGreaterThan(250)
    expect(demos.flatMap((demo) => before.get(demo)?.problems ?? [])).toEqual([])
  })

  it.each(rows.map((r) => [JSON.stringify(r), r] as const))(
    'is not used in silence: %s',
    async (_, { demo, ...row }) => {
      const { problems, findings } = await saidOfAltered(demo, row)
      if (row.says !== undefined)
        expect(problems.map((p) => p.message)).toContainEqual(expect.stringContaining(row.says))
      else {
        expect(findings).toContain(row.finding)
        expect(before.get(demo)?.findings).not.toContain(row.finding)
      }
      for (const p of problems) {
        expect(p.place.line).toBeGreaterThan(0)
        expect(p.place.file).toMatch(/\.(yaml|csv|geojson)$/)
      }
    },
  )
})
