import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { evidenceOf, numberStyle, withPoint } from '../../../src/validate/imports/number-style.ts'

const words = (...texts: readonly string[]) => texts.map((text) => ({ text }))
const asked = (text: string, all: readonly string[], usual?: '.' | ',') =>
  withPoint({ text }, numberStyle(words(...all), usual))

describe('the mark before decimals', () => {
  it.each([
    ['1.25', '.'],
    ['1,25 in', ','],
    ['1.250,5', ','],
    ['1,250.5 ft', '.'],
    ['1,250,000', '.'],
    ['0,250', ','],
    ['0.250', '.'],
    ['1.250', 'either'],
    ['1,250 ft', 'either'],
    ['-1,250', 'either'],
    ['2640', 'none'],
    ['2 1/2 in', 'none'],
    ['soft', 'none'],
  ])('of %s is told as %s', (text, mark) => {
    expect(evidenceOf({ text })).toBe(mark)
  })

  it('is no question for what a workbook keeps as a number', () => {
    expect(evidenceOf({ text: '1.25', kind: 'number' })).toBe('none')
    expect(withPoint({ text: '1.25', kind: 'number' }, { mark: ',', ask: true })).toBe('1.25')
  })

  it('is taken from the others of the table, and asked for where none of them tells', () => {
    expect(asked('1,250', ['1,250', '0,375'])).toBe('1.250')
    expect(asked('1.250', ['1.250', '0,375'])).toBe('1250')
    expect(asked('1,250', ['1,250', '2.5'])).toBe('1,250')
    expect(asked('1,250', ['1,250'], '.')).toBe('1,250')
    expect(asked('1.250 L', ['1.250 L', '300'])).toMatchObject({
      message: '"1.250 L" can be 1250 or 1.250',
      hint: 'write 1250 L; or, where it is a little more than 1, 1.2500 L',
    })
  })

  it('is asked for where a comma goes against what is usual, and where both stand in a table', () => {
    expect(asked('2,640 ft', ['2,640 ft', '1,25 ft'], '.')).toMatchObject({
      code: 'quantity/number',
    })
    expect(asked('2.5', ['2.5', '1,25', '0,75'])).toMatchObject({
      message: '"2.5" has a decimal point, and most numbers here a decimal comma',
    })
  })

  it('never changes what a number is, in either way of writing', () => {
    const decimals = fc.integer({ min: 0, max: 9_999_999 }).map((n) => n / 100)
    fc.assert(
      fc.property(fc.array(decimals, { minLength: 1 }), (numbers) => {
        for (const locale of ['de-DE', 'en-US'] as const) {
          const texts = [
            ...numbers.map((n) => n.toLocaleString(locale, { minimumFractionDigits: 2 })),
            locale === 'de-DE' ? '0,5' : '0.5',
          ]
          const style = numberStyle(words(...texts), undefined)
          const read = texts.map((text) => withPoint({ text }, style))
          expect(read.map((r) => Number(String(r).replaceAll(',', '')))).toEqual([...numbers, 0.5])
        }
      }),
    )
  })
})
