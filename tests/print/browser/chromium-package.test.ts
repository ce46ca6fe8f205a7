import path from 'node:path'
import { describe, expect, it } from 'vitest'
import {
  fontEnvironment,
  libraryEnvironment,
  runsOn,
  unpackEnvironment,
} from '../../../src/print/browser/chromium-package.ts'
import { machines } from '../../support/machines.ts'

describe('the browser of the package', () => {
  it('runs on Linux x64 alone', () => {
    expect(runsOn(machines.linux)).toBe(true)
    expect(runsOn({ ...machines.linux, arch: 'arm64' })).toBe(false)
    expect(runsOn(machines.mac)).toBe(false)
    expect(runsOn(machines.windows)).toBe(false)
  })

  it('is unpacked with its libraries into the folder that is meant, whatever else is set', () => {
    const env = unpackEnvironment('/kept/unpack-1', { TMPDIR: '/tmp', NODE_OPTIONS: '--x', A: '1' })
    expect(env).toMatchObject({ TMPDIR: '/kept/unpack-1', NODE_OPTIONS: '', A: '1' })
    expect(env['AWS_EXECUTION_ENV']).toMatch(/^AWS_Lambda_nodejs/)
  })

  it('takes its own list of fonts where the machine has none, and its libraries when told', () => {
    expect(fontEnvironment('/kept', () => true)).toEqual({})
    expect(fontEnvironment('/kept', () => false)).toEqual({
      FONTCONFIG_PATH: path.join('/kept', 'fonts'),
    })
    expect(libraryEnvironment('/kept')).toEqual({
      LD_LIBRARY_PATH: path.join('/kept', 'al2023', 'lib'),
    })
  })
})
