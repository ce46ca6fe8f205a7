import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { problemsText } from '../../src/cli/problem-text.ts'
import type { Problem } from '../../src/model/problem.ts'
import { readYaml } from '../../src/read/read-yaml.ts'
import { checkFacility } from '../../src/validate/check-facility.ts'
import { demoIds } from '../../src/validate/facility/demos.ts'
import { testsFolder } from '../support/demo.ts'
import { mistakesOfTyping, withoutMistake } from '../support/mistakes.ts'
import { withAdvice } from '../support/take-advice.ts'

const mistakes = mistakesOfTyping()

function problemsOf(text: string) {
  const { value, problems } = readYaml({ path: 'facility.yaml', text })
  return value ? [...problems, ...checkFacility(value).problems] : problems
}

const isSame = (a: Problem, b: Problem): boolean =>
  a.message === b.message && a.place.line === b.place.line

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

  it('are gone once what is to be typed has been copied to the letter', () => {
    let followed = 0
    for (const { name, text } of mistakes) {
      const problems = problemsOf(text)
      for (const problem of problems) {
        const mended = withAdvice(text, problem)
        if (mended === undefined) continue
        followed++
        const told = `${name}: ${problem.hint}`
        const left = problemsOf(mended)
        expect(
          left.filter((p) => isSame(p, problem)),
          told,
        ).toEqual([])
        // What only its writer knows is asked for next; nothing that was read is broken.
        expect(
          left.filter((p) => p.code.startsWith('yaml/')),
          told,
        ).toEqual([])
      }
    }
    expect(followed).toBeGreaterThan(100)
  })

  it('never bring the telephones, names and places of others into what is to be typed', () => {
    for (const { name, text } of mistakes)
      for (const { hint = '' } of problemsOf(text)) {
        expect(hint, name).not.toMatch(/555-?01\d\d|Our Town|A\. Name|County Hospital/)
        expect(
          demoIds.filter((id) => hint.toLowerCase().includes(id)),
          name,
        ).toEqual([])
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
