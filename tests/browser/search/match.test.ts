import { describe, expect, it } from 'vitest'
import { alike, roughlyAlike } from '../../../src/browser/search/match.ts'

describe('a word that is typed', () => {
  it('fits itself best, then words that begin with it, then those of the same stem', () => {
    const order = ['harrow', 'harrows', 'harrowing', 'harrowedground'].map((w) =>
      alike('harrow', w),
    )
    expect(order).toEqual([...order].sort((a, b) => b - a))
    expect(order[0]).toBe(1)
    expect(alike('sprinkling', 'sprinkle')).toBeGreaterThan(0.7)
    expect(alike('dusty', 'dust')).toBeGreaterThan(0)
  })

  it('does not fit a word that only begins alike', () => {
    expect(alike('station', 'stable')).toBe(0)
    expect(alike('harden', 'harrow')).toBe(0)
  })

  it('fits a misspelt one roughly: one letter wrong from four on, two from eight on', () => {
    expect(roughlyAlike('harow', 'harrow')).toBeGreaterThan(0.5)
    expect(roughlyAlike('watter', 'water')).toBeGreaterThan(0.5)
    expect(roughlyAlike('moisturre', 'moisture')).toBeGreaterThan(0.4)
    expect(roughlyAlike('rut', 'cut')).toBe(0)
    expect(roughlyAlike('harrow', 'narrow')).toBe(roughlyAlike('narrow', 'harrow'))
    expect(roughlyAlike('seal', 'real')).toBe(0)
  })

  it('takes numbers as they are', () => {
    expect(alike('w-2', 'w-24')).toBe(0)
    expect(alike('w-24', 'w-24')).toBe(1)
    expect(roughlyAlike('w-24', 'w-25')).toBe(0)
    expect(roughlyAlike('2027', '2026')).toBe(0)
  })
})
