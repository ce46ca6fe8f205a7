import { describe, expect, it } from 'vitest'
import { type Composers, composeParts } from '../../src/compose/parts.ts'

type Whole = { readonly first: number; readonly second: number; readonly third: number }

describe('the parts of a whole', () => {
  it('are made from one another in whatever order they stand', () => {
    const composers: Composers<Whole, Whole> = {
      first: (parts) => parts.third + 1,
      second: (parts) => parts.first * 10,
      third: () => 4,
    }
    expect(composeParts(composers, (parts) => parts)).toEqual({ first: 5, second: 50, third: 4 })
  })

  it('are made once each, and are plain values afterward', () => {
    let made = 0
    const composers: Composers<Whole, Whole> = {
      first: ({ third }) => third,
      second: ({ third }) => third,
      third: () => ++made,
    }
    const whole = composeParts(composers, (parts) => parts)
    expect(whole).toEqual({ first: 1, second: 1, third: 1 })
    expect(Object.getOwnPropertyDescriptor(whole, 'third')).toMatchObject({ value: 1 })
    expect(made).toBe(1)
  })

  it('are refused when one needs itself by way of another', () => {
    const composers: Composers<Whole, Whole> = {
      first: ({ second }) => second,
      second: ({ first }) => first,
      third: () => 0,
    }
    expect(() => composeParts(composers, (parts) => parts).first).toThrow(
      'the part first needs itself',
    )
  })
})
