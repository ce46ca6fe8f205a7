import { describe, expect, it } from 'vitest'
import { applies, type Circumstances } from '../../src/compose/applies.ts'

const values: Readonly<Record<string, number>> = { 'gap.laps': 2, 'gap.water': 0 }
const here: Circumstances = {
  surface: 'clay',
  rail: 'pylons',
  units: 'us',
  capabilities: new Set(['harrow', 'spray']),
  si: (name) => values[name],
}

describe('applies', () => {
  it('holds without a condition', () => {
    expect(applies(undefined, here)).toBe(true)
  })
  it('takes one of several surfaces', () => {
    expect(applies({ surface: ['clay', 'stone-dust'] }, here)).toBe(true)
    expect(applies({ surface: 'stone-dust' }, here)).toBe(false)
  })
  it('wants every machine under has, any under any, none under lacks', () => {
    expect(applies({ has: ['harrow', 'spray'] }, here)).toBe(true)
    expect(applies({ has: ['harrow', 'grade'] }, here)).toBe(false)
    expect(applies({ any: ['grade', 'spray'] }, here)).toBe(true)
    expect(applies({ any: ['grade', 'tamp'] }, here)).toBe(false)
    expect(applies({ lacks: 'grade' }, here)).toBe(true)
    expect(applies({ lacks: ['grade', 'harrow'] }, here)).toBe(false)
  })
  it('wants figures above zero or at zero, and takes an unknown one for neither', () => {
    expect(applies({ 'above-zero': 'gap.laps' }, here)).toBe(true)
    expect(applies({ 'above-zero': ['gap.laps', 'gap.water'] }, here)).toBe(false)
    expect(applies({ zero: 'gap.water' }, here)).toBe(true)
    expect(applies({ zero: 'gap.laps' }, here)).toBe(false)
    expect(applies({ zero: 'gap.other' }, here)).toBe(false)
    expect(applies({ 'above-zero': 'gap.other' }, here)).toBe(false)
  })
  it('wants all entries at once', () => {
    expect(applies({ surface: 'clay', rail: 'hub-rail' }, here)).toBe(false)
  })
})
