import { describe, expect, it } from 'vitest'
import { run } from './support/run.ts'

describe('command line', () => {
  it.each(['build', 'check', 'explain', 'preview'])('%s explains itself', async (command) => {
    const { code, out } = await run(command, '--help')
    expect(code).toBe(0)
    expect(out).toMatch(/Usage: ovalkeep/)
    expect(out).toMatch(/Exit codes:\n {2}0 /)
  })
  it('suggests the command or option that was meant', async () => {
    expect(await run('biuld')).toMatchObject({
      code: 2,
      err: expect.stringContaining('Did you mean build?'),
    })
    expect(await run('build', '--quit')).toMatchObject({
      code: 2,
      err: expect.stringContaining('Did you mean --quiet?'),
    })
  })
})
