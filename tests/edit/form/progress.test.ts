import { describe, expect, it } from 'vitest'
import { isAnswered } from '../../../src/edit/form/progress.ts'

const days = (date: string) => ({
  'race-days': [{ date, 'first-post': '1:00 PM', races: 10, interval: '20 min' }],
})
const asked = {
  id: 'days',
  subject: 'days',
  ask: 'When?',
  why: '',
  how: '',
  entries: ['race-days'],
}

describe('a question that comes first', () => {
  it('is answered by what can be used, and by nothing else', () => {
    expect(isAnswered(days('2027-08-03'), asked)).toBe(true)
    expect(isAnswered(days('2027-02-30'), asked)).toBe(false)
    expect(isAnswered(days('Aug 3'), asked)).toBe(false)
    expect(isAnswered({ 'race-days': [{ date: '2027-08-03' }] }, asked)).toBe(false)
    expect(isAnswered({}, asked)).toBe(false)
    expect(isAnswered({ units: 'us' }, { ...asked, entries: ['units'] })).toBe(true)
    expect(isAnswered({ units: 'feet' }, { ...asked, entries: ['units'] })).toBe(false)
  })
})
