import { readFileSync } from 'node:fs'
import path from 'node:path'
import { expect, it } from 'vitest'
import { demoFolder, demos } from '../support/demo.ts'
import { firstLine } from '../support/first-line.ts'
import { plantedFaults } from '../support/planted-yaml.ts'

/** One of so many of about 3,400. */
const sample = 3

it('points at faults of typing in the line where they began, all but one of five hundred', () => {
  const planted = demos
    .flatMap((demo) =>
      plantedFaults(readFileSync(path.join(demoFolder(demo), 'facility.yaml'), 'utf8')),
    )
    .filter((_, i) => i % sample === 0)
  const missed = planted.filter((p) => firstLine(p.text) !== p.line)
  expect(planted.length).toBeGreaterThan(1000)
  expect(missed.length).toBeLessThanOrEqual(planted.length / 500)
})
