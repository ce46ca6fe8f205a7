import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { readYaml } from '../../src/read/read-yaml.ts'
import { demoFolder, demos } from '../support/demo.ts'
import { firstLine } from '../support/first-line.ts'
import { plantedFaults } from '../support/planted-yaml.ts'

/** One of so many; more are gone through where whole demos are. */
const sample = 13

describe('a fault of typing', () => {
  const planted = demos.flatMap((demo) =>
    plantedFaults(readFileSync(path.join(demoFolder(demo), 'facility.yaml'), 'utf8')),
  )
  const some = planted.filter((_, i) => i % sample === 0)

  it('is pointed at in the line where it began', () => {
    expect(some.length).toBeGreaterThan(200)
    const missed = some.filter((p) => firstLine(p.text) !== p.line)
    expect(missed.length).toBeLessThanOrEqual(1)
  })

  it('is the only one that is told of a file that cannot be read', () => {
    for (const { text } of some) {
      const { value, problems } = readYaml({ path: 'facility.yaml', text })
      if (!value) expect(problems).toHaveLength(1)
    }
  })
})
