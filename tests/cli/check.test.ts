import path from 'node:path'
import { describe, expect, it } from 'vitest'
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
    expect(out).not.toMatch(/[{}]/)
  })
  it('fails on a folder that is none', async () => {
    expect(await run('check', path.join(folders.project, 'nowhere'))).toMatchObject({
      code: 1,
      err: expect.stringContaining('[file/missing]'),
    })
  })
})
