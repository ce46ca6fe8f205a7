import { describe, expect, it } from 'vitest'
import { type Slot, savingFiles } from '../../../../src/browser/form/host/save-files.ts'

/** A file on a disk. */
function fileOf(text: string) {
  const file = { text }
  const slot: Slot = {
    read: async () => file.text,
    write: async (more) => {
      file.text = more
    },
  }
  return { file, slot }
}

const opened = new Map([
  ['facility.yaml', 'name: A\n'],
  ['depths.csv', 'one\n'],
])
const both = new Map([
  ['facility.yaml', 'name: B\n'],
  ['depths.csv', 'two\n'],
])

function given() {
  const handed: string[] = []
  const asked: string[] = []
  return {
    handed,
    asked,
    none: {
      opened,
      slots: new Map<string, Slot>(),
      newSlot: async (name: string): Promise<Slot | undefined> => {
        asked.push(name)
        return undefined
      },
      handOver: (name: string) => void handed.push(name),
      notWritten: 'not written',
    },
  }
}

describe('a page that saves files by itself', () => {
  it('writes each into the file that was picked', async () => {
    const { none, asked } = given()
    const [file, table] = [fileOf('name: A\n'), fileOf('one\n')]
    const slots = new Map([
      ['facility.yaml', file.slot],
      ['depths.csv', table.slot],
    ])
    const saving = savingFiles({ ...none, slots })
    expect(await saving.save(both)).toEqual({ kind: 'saved' })
    expect([file.file.text, table.file.text]).toEqual(['name: B\n', 'two\n'])
    expect(saving.saved()).toEqual(both)
    expect(asked).toEqual([])
  })

  it('writes over nothing that somebody else has written, and takes it the next time', async () => {
    const { none } = given()
    const { file, slot } = fileOf('theirs\n')
    const saving = savingFiles({ ...none, slots: new Map([['depths.csv', slot]]) })
    const mine = new Map([['depths.csv', 'two\n']])
    const changed = { kind: 'changed', file: 'depths.csv', text: 'theirs\n' }
    expect(await saving.save(mine)).toEqual(changed)
    expect(file.text).toBe('theirs\n')
    expect(await saving.save(mine)).toEqual({ kind: 'saved' })
    expect(file.text).toBe('two\n')
  })

  it('asks for a new file once, and hands over what it may not ask for', async () => {
    const { none, handed } = given()
    const { file, slot } = fileOf('')
    const asked: string[] = []
    const newSlot = async (name: string) => {
      asked.push(name)
      return name === 'facility.yaml' ? slot : undefined
    }
    const saving = savingFiles({ ...none, opened: new Map(), newSlot })
    expect(await saving.save(both)).toEqual({ kind: 'saved' })
    expect(file.text).toBe('name: B\n')
    expect(handed).toEqual(['depths.csv'])
    await saving.save(both)
    expect(asked).toEqual(['facility.yaml', 'depths.csv', 'depths.csv'])
  })

  it('has saved nothing where somebody says no', async () => {
    const { none, handed } = given()
    const newSlot = async () => {
      throw new Error('closed')
    }
    const saving = savingFiles({ ...none, newSlot })
    expect(await saving.save(both)).toEqual({ kind: 'failed', why: 'not written' })
    expect(saving.saved()).toBe(opened)
    expect(handed).toEqual([])
  })
})
