import { describe, expect, it } from 'vitest'
import { entryLabel, entryOf } from '../../../../src/browser/form/live/entry-of.ts'
import { entryAbout } from '../../../../src/model/entry-about.ts'
import { groupsOf } from '../../../../src/validate/schema-advice/schema-keys.ts'
import { facility } from '../../../../src/validate/schemas/facility.ts'
import { demoFiles } from '../../../answers/support/work.ts'
import { shownOf } from './support.ts'

const { file } = shownOf(demoFiles('larkmoor')).facility
const bare = shownOf(new Map()).facility.file

describe('the entry of a fact', () => {
  it('is its own path', () => {
    expect(entryOf('oval.width.turns', file)).toBe('oval.width.turns')
    expect(entryOf('rail-ridge.height', bare)).toBe('rail-ridge.height')
  })

  it('of a machine is that of the first machine that does the work, or the list of machines', () => {
    expect(entryOf('gear.spray.flow', file)).toBe('equipment.5.flow')
    expect(entryOf('gear.spray.flow', bare)).toBe('equipment')
  })

  it('of race days is that of the first one, or their list', () => {
    expect(entryOf('race-days.interval', file)).toBe('race-days.0.interval')
    expect(entryOf('race-days.interval', bare)).toBe('race-days')
  })
})

describe('what an entry is called', () => {
  it('begins as a sentence does', () => {
    expect(entryLabel('oval.lap')).toBe('One lap at the measuring line')
    expect(entryLabel('contacts.3.phone')).toMatch(/^[A-Z]/)
  })

  it('is never a key of the file', () => {
    const entries = groupsOf(facility).flatMap(({ path, keys }) =>
      keys.map((key) => [...path, key].join('.')),
    )
    expect(entries.length).toBeGreaterThan(200)
    const without = entries.filter((entry) => entryAbout(entry.split('.')) === undefined)
    expect(without).toEqual([])
  })
})
