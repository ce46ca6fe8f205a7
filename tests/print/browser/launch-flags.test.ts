import { describe, expect, it } from 'vitest'
import { launchFlags } from '../../../src/print/browser/launch-flags.ts'
import { machines } from '../../support/machines.ts'

const nothing = (): boolean => false

describe('flags for the browser', () => {
  it.each(Object.entries(machines))('on %s keep the sandbox and reach no host', (_, machine) => {
    const flags = launchFlags(machine, nothing)
    expect(flags).toContain('--host-resolver-rules=MAP * ~NOTFOUND')
    expect(flags).toContain('--font-render-hinting=none')
    expect(flags).not.toContain('--no-sandbox')
  })

  it('give up the sandbox on Linux for root, on a build machine and in a container', () => {
    const { linux } = machines
    expect(launchFlags({ ...linux, user: 0 }, nothing)).toContain('--no-sandbox')
    expect(launchFlags({ ...linux, env: { CI: '1' } }, nothing)).toContain('--no-sandbox')
    expect(launchFlags({ ...linux, env: { container: 'podman' } }, nothing)).toContain(
      '--no-sandbox',
    )
    expect(launchFlags(linux, (file) => file === '/.dockerenv')).toContain('--no-sandbox')
  })

  it('keep it on build machines of other kinds, whose sandbox needs no rights', () => {
    for (const machine of [machines.mac, machines.windows])
      expect(launchFlags({ ...machine, env: { CI: '1' } }, nothing)).not.toContain('--no-sandbox')
  })
})
