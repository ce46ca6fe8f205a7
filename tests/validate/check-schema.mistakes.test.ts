import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import * as z from 'zod'
import { problemsText } from '../../src/cli/problem-text.ts'
import { readYaml } from '../../src/read/read-yaml.ts'
import { checkFacility } from '../../src/validate/check-facility.ts'
import { edited } from '../support/bad-input.ts'
import { testsFolder } from '../support/demo.ts'

const folder = path.join(testsFolder, 'fixtures', 'typed')

const { start, mistakes } = z
  .strictObject({
    start: z.string(),
    mistakes: z.array(
      z.strictObject({
        name: z.string(),
        replace: z.record(z.string(), z.string()).default({}),
        add: z.string().default(''),
        text: z.string().optional(),
      }),
    ),
  })
  .parse(parse(readFileSync(path.join(folder, 'mistakes.yaml'), 'utf8')))

function problemsOf(text: string) {
  const { value, problems } = readYaml({ path: 'facility.yaml', text })
  return value ? [...problems, ...checkFacility(value).problems] : problems
}

describe('mistakes of typing', () => {
  it('have something said of each, with what to type', () => {
    expect(problemsOf(start)).toEqual([])
    expect(mistakes.length).toBeGreaterThanOrEqual(80)
    for (const mistake of mistakes) {
      const problems = problemsOf(edited(start, mistake))
      expect(problems, mistake.name).not.toEqual([])
      for (const { hint } of problems) expect(hint, mistake.name).not.toBeUndefined()
    }
  })

  it('are answered as in the table that was read by people', async () => {
    const table = mistakes.map((mistake) => {
      const said = problemsText(problemsOf(edited(start, mistake)), (name) => name, false)
      return `## ${mistake.name}\n\n${said.replace(/\n\n\d+ errors?, \d+ warnings? in 1 file$/, '')}\n`
    })
    await expect(table.join('\n')).toMatchFileSnapshot(path.join(folder, 'messages.txt'))
  })
})
