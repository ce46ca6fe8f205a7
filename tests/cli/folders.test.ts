import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { facilityFolder, projectFolders, terminalNames } from '../../src/cli/folders.ts'

const folders = projectFolders()
const at = (...parts: readonly string[]): string => path.join(folders.project, ...parts)
const parent = path.dirname(folders.project)
const slashes = (file: string): string => file.split(path.sep).join('/')

describe('a file that a problem names is called on the terminal', () => {
  const larkmoor = at('content', 'facilities', 'larkmoor')
  const elsewhere = path.join(parent, 'my-fair')

  it('by its path in the project, when a command is started there', () => {
    const name = terminalNames(larkmoor, folders, folders.project)
    expect(name('content/facilities/larkmoor/facility.yaml')).toBe(
      'content/facilities/larkmoor/facility.yaml',
    )
    expect(name('content/words.yaml')).toBe('content/words.yaml')
  })

  it('by its path from the folder in which the command is started', () => {
    const name = terminalNames(elsewhere, folders, parent)
    expect(name('facility.yaml')).toBe('my-fair/facility.yaml')
    expect(name('procedures/own.yaml')).toBe('my-fair/procedures/own.yaml')
    expect(name('content/words.yaml')).toBe(`${path.basename(folders.project)}/content/words.yaml`)
  })

  it('by its whole path, when it lies elsewhere', () => {
    const name = terminalNames(elsewhere, folders, folders.project)
    expect(name('facility.yaml')).toBe(slashes(path.join(elsewhere, 'facility.yaml')))
  })
})

describe('a facility', () => {
  it('is named by its folder or by the file in it', () => {
    const folder = at('content', 'facilities', 'ostmere')
    expect(facilityFolder('content/facilities/ostmere', folders.project, folders)).toBe(folder)
    expect(
      facilityFolder('content/facilities/ostmere/facility.yaml', folders.project, folders),
    ).toBe(folder)
  })
})
