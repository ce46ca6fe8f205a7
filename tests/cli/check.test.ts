import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { readYaml } from '../../src/read/read-yaml.ts'
import { checkFacility } from '../../src/validate/check-facility.ts'
import { demoFolder, folders } from '../support/demo.ts'
import { run } from './support/run.ts'

describe('check', () => {
  it('prints findings with severity, figures, what to do and where it comes from', async () => {
    const { code, out } = await run('check', demoFolder('brambleford'))
    expect(code).toBe(0)
    expect(out).toMatch(
      /SERIOUS {2}The cushion is too thin\n.*Found 25 mm; wanted 40 mm[\s\S]*To do: [\s\S]*facility\.yaml:\d+/,
    )
    expect(out).toMatch(/PLAN {5}No grader/)
    // Braces stand in the lines to paste alone.
    expect(out.replaceAll(/^ {9}- \{.*\}$/gm, '')).not.toMatch(/[{}]/)
  })
  it('gives for what nobody has measured the line to paste, which the file then takes', async () => {
    const { out } = await run('check', demoFolder('brambleford'))
    const lines = [...out.matchAll(/^ {9}- (\{ of: .*\})$/gm)].map((m) => m[1] ?? '')
    expect(lines.length).toBeGreaterThan(10)
    const text = await readFile(path.join(demoFolder('brambleford'), 'facility.yaml'), 'utf8')
    for (const line of lines) {
      const { value } = readYaml({ path: 'facility.yaml', text: `${text}  - ${line}\n` })
      const problems = value ? checkFacility(value).problems : []
      expect(problems.filter((p) => p.severity === 'error').map((p) => p.message)).toEqual([])
    }
  })
  it('fails on a folder that is none', async () => {
    expect(await run('check', path.join(folders.project, 'nowhere'))).toMatchObject({
      code: 1,
      err: expect.stringContaining('[file/missing]'),
    })
  })
})
