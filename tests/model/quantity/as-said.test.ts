import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseQuantity } from '../../../src/model/quantity/parse-quantity.ts'
import { quantityPattern } from '../../../src/model/quantity/units-pattern.ts'

const read = (text: string) => {
  const parsed = parseQuantity(text)
  return parsed.ok ? parsed.quantity : undefined
}

/** What people say, and the same as a facility file has it. */
const said: readonly (readonly [said: string, written: string])[] = [
  ['half a mile', '1/2 mi'],
  ['Half a mile', '1/2 mi'],
  ['a quarter of a mile', '1/4 mi'],
  ['three quarters of a mile', '3/4 mi'],
  ['two and a half miles', '2 1/2 mi'],
  ['forty feet', '40 ft'],
  ['forty-five feet', '45 ft'],
  ['twenty five feet', '25 ft'],
  ['a hundred gallons a minute', '100 gal/min'],
  ['two hundred feet', '200 ft'],
  ['300 thousand gallons', '300,000 gal'],
  ['1.5 million gallons', '1,500,000 gal'],
  ['3/4 of an inch', '3/4 in'],
  ['an inch', '1 in'],
  ['an inch and a quarter', '1 1/4 in'],
  ['an hour and a half', '90 min'],
  ['1 hour and 30 minutes', '90 min'],
  ['two weeks', '14 days'],
  ['a week', '7 days'],
  ['8 per cent', '8 %'],
  ['$24 a ton', '$24/ton'],
  ['$18 an hour', '$18/h'],
  ['$3.89 a gallon', '$3.89/gal'],
  ['$6 per thousand gallons', '$0.006/gal'],
  ['$6 a thousand gallons', '$0.006/gal'],
  ['6 dollars per 1,000 gal', '$0.006/gal'],
  ['$6/1000 gal', '$0.006/gal'],
  ['$6/kgal', '$0.006/gal'],
  ['60 cents per 100 gallons', '$0.006/gal'],
  ['2 1/2 in in 10 ft', '2.083333333333 %'],
  ['2 1/2 inches per 10 feet', '2.083333333333 %'],
  ['1 ft over 50 ft', '2 %'],
]

describe('quantities as people say them', () => {
  it.each(said)('%s is %s', (text, written) => {
    const [meant, same] = [read(text), read(written)]
    expect(meant?.dims).toEqual(same?.dims)
    expect((meant?.si ?? 0) / (same?.si ?? 1)).toBeCloseTo(1, 10)
    expect(meant?.isRough).toBeUndefined()
  })

  it.each(['about 60 ft', '~60 ft', 'roughly sixty feet', '60 ft or so', 'ca. 60 ft'])(
    '%s is 60 ft, and no more than an estimate',
    (text) => {
      expect(read(text)?.si).toBeCloseTo(18.288, 9)
      expect(read(text)?.isRough).toBe(true)
    },
  )

  it.each([
    'a few feet',
    'six in to 1 ft',
    'forty',
    'at least 60 ft',
    'an inch of rain in two',
    '__proto__',
    'constructor',
    'toString ft',
  ])('nobody can tell what %s is', (text) => expect(read(text)).toBeUndefined())

  it('an editor refuses nothing that is read', () => {
    const before = fc.constantFrom('', 'about ', '~', 'Roughly ')
    const behind = fc.constantFrom('', ' or so')
    const texts = fc.constantFrom(...said.flat())
    fc.assert(
      fc.property(before, texts, behind, (front, text, back) => {
        const typed = `${front}${text}${back}`
        const found = read(typed)
        fc.pre(found !== undefined)
        expect(typed).toMatch(new RegExp(quantityPattern(found?.dims ?? [0, 0, 0, 0, 0, 0], false)))
      }),
      { numRuns: 300 },
    )
  })
})
