import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { problemsText } from '../../src/cli/problem-text.ts'
import { readYaml } from '../../src/read/read-yaml.ts'
import { checkFacility } from '../../src/validate/check-facility.ts'
import { testsFolder } from '../support/demo.ts'
import { mistakesOfTyping, withoutMistake } from '../support/mistakes.ts'

const mistakes = mistakesOfTyping()

function problemsOf(text: string) {
  const { value, problems } = readYaml({ path: 'facility.yaml', text })
  return value ? [...problems, ...checkFacility(value).problems] : problems
}

describe('mistakes of typing', () => {
  it('have something said of each, with what to type', () => {
    expect(problemsOf(withoutMistake())).toEqual([])
    expect(mistakes.length).toBeGreaterThanOrEqual(80)
    for (const { name, text } of mistakes) {
      const problems = problemsOf(text)
      expect(problems, name).not.toEqual([])
      for (const { hint } of problems) expect(hint, name).not.toBeUndefined()
    }
  })

  it('are answered as in the table that was read by people', async () => {
    const table = mistakes.map(({ name, text }) => {
      const said = problemsText(problemsOf(text), (file) => file, false)
      return `## ${name}\n\n${said.replace(/\n\n\d+ errors?, \d+ warnings? in 1 file$/, '')}\n`
    })
    await expect(table.join('\n')).toMatchFileSnapshot(
      path.join(testsFolder, 'fixtures', 'typed', 'messages.txt'),
    )
  })
})
