import { describe, expect, it } from 'vitest'
import { run } from './support/run.ts'

describe('command line', () => {
  it.each(['build', 'check', 'explain', 'preview'])('%s explains itself', async (command) => {
    const { code, out } = await run(command, '--help')
    expect(code).toBe(0)
    expect(out).toMatch(/Usage: ovalkeep/)
    expect(out).toMatch(/Exit codes:\n {2}0 /)
  })
  it('names the codes with which a command can end, and no others', async () => {
    const codes = async (command: string): Promise<readonly string[]> =>
      [...(await run(command, '--help')).out.matchAll(/^ {2}(\d+) +\S/gm)].map(([, n]) => n ?? '')
    expect(await codes('check')).toEqual(['0', '1', '2', '70'])
    expect(await codes('build')).toEqual(['0', '1', '2', '3', '5', '70'])
    expect(await codes('form')).not.toContain('4')
    expect((await run('form', '--help')).out).not.toContain('Of several facilities')
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
