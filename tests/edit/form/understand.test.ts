import { describe, expect, it } from 'vitest'
import { type Question, questionAt, questionsOf } from '../../../src/edit/form/question.ts'
import { understand } from '../../../src/edit/form/understand.ts'
import { degreesMeant } from '../../../src/model/degrees.ts'
import type { Path } from '../../../src/read/read-yaml.ts'
import { facility } from '../../../src/validate/schemas/facility.ts'

const questions = questionsOf(facility)
const copied = 'This is from the example.'

function typed(at: Path, text: string, system: 'us' | 'metric' = 'us', fairYear?: string) {
  const question = questionAt(questions, at) as Question
  const currency = system === 'us' ? 'USD' : 'EUR'
  return understand({ question, at, locale: { system, currency }, copied, fairYear }, text)
}

it('leaves out marks that nobody sees, as contacts and other programs copy them along', () => {
  const marked = '\u202d555-0131\u202c\u0000'
  expect(typed(['contacts', 0, 'phone'], marked).value).not.toMatch(/[\u202d\0]/)
})

describe('a quantity', () => {
  it.each([
    [['oval', 'lap'], '2640', '2640 ft', '2640 ft = 804.7 m'],
    [['equipment', 0, 'width'], '12 ft 6 in', '12 ft 6 in', '12 ft 6 in = 12.5 ft = 3.81 m'],
    [['cushion', 'depth', 'target'], '1 1/4', '1 1/4 in', '1 1/4 in = 31.75 mm'],
    [['cushion', 'depth', 'target'], '1¼', '1¼ in', /= 31.75 mm$/],
    [['oval', 'cross-fall', 'turns'], '6.5', '6.5 %', undefined],
    [['cushion', 'unit-weight', 'loose'], '98', '98 lb/ft³', '98 lb/ft³ = 1,570 kg/m³'],
    [['prices', 'material'], '19.50', '$19.50/ton', undefined],
    [['water', 'fill-flow'], '250', '250 gal/min', '250 gal/min = 946.4 L/min'],
    [['equipment', 0, 'travel'], '90', '90 min', '90 min = 1 h 30 min'],
    [['equipment', 0, 'blade-angle'], '35', '35 deg', '35 deg = 35°'],
    [['climate', 0, 'tmax'], '85', '85 °F', '85 °F = 29.44 °C'],
    [['oval', 'lap'], 'about 2640 ft', 'about 2640 ft', 'about 2640 ft = 2,640 ft = 804.7 m'],
    [['equipment', 0, 'travel'], 'ten minutes', '10 minutes', '10 minutes = 10 min'],
    [['equipment', 0, 'travel'], 'ten', '10 min', undefined],
    [['cushion', 'depth', 'target'], 'two inches', '2 inches', /= 50\.8 mm$/],
    [['crew', 'race-day'], '4 volunteers', 4, '4 volunteers = 4'],
    [['equipment', 0, 'passes'], 'twice', 2, 'twice = 2'],
    [
      ['prices', 'water'],
      '$6 per thousand gallons',
      '$0.006/gallons',
      '$0.006/gallons = $0.006/gal',
    ],
    [['prices', 'material'], '$24 a ton', '$24 a ton', '$24 a ton = $24.00/ton'],
    [['prices', 'water'], 'free', 'free', 'free = $0.00/gal'],
    [['oval', 'cross-fall', 'turns'], '6 in in 10 ft', '6 in in 10 ft', '6 in in 10 ft = 5 %'],
    [['oval', 'lap'], 'half a mile', '1/2 mile', '1/2 mile = 2,640 ft = 804.7 m'],
    [['oval', 'straight'], '180 m', '180 m', /^180 m = 590\.6 ft$|^180 m = 591 ft$/],
  ] as const)('%j: %s is understood as %s', (at, text, left, shown) => {
    const found = typed(at, text)
    expect(found.fault).toBeUndefined()
    expect(found.typed).toBe(String(left))
    expect(found.value).toBe(left)
    if (shown instanceof RegExp) expect(found.shown).toMatch(shown)
    else expect(found.shown).toBe(shown)
  })

  it('without a unit has that of the fair', () => {
    expect(typed(['oval', 'lap'], '805', 'metric').value).toBe('805 m')
    expect(typed(['prices', 'labor'], '22', 'metric').value).toBe('€22/h')
    expect(typed(['crew', 'people'], '3').value).toBe(3)
  })

  it.each([
    [['oval', 'lap'], '26', /outside what can be true of one lap.*1,000 ft to 11,000 ft/],
    [['oval', 'lap'], '2640 gallons', /is not a distance.*600 ft/],
    [['oval', 'width', 'turns'], '60 to 70 ft', /is a range: write one value, such as 65 ft/],
    [['crew', 'people'], '2.5', /no whole number/],
  ] as const)('%j: %s has a fault in plain words', (at, text, fault) => {
    const found = typed(at, text)
    expect(found.fault).toMatch(fault)
    expect(found.fault).not.toMatch(/[#{}]|quote|a line|file|entry/)
  })

  it.each(['?', 'unknown', 'not measured yet', "I don't know", 'tbd', ''])(
    'that nobody knows is left out: %s',
    (text) => expect(typed(['oval', 'lap'], text)).toMatchObject({ value: undefined, typed: '' }),
  )
})

describe('other answers', () => {
  it.each([
    [['race-days', 0, 'date'], 'August 3, 2027', '2027-08-03'],
    [['race-days', 0, 'date'], '2027-8-3', '2027-08-03'],
    [['race-days', 0, 'first-post'], '1 pm', '1:00 PM'],
    [['race-days', 0, 'first-post'], '6.30 p.m.', '6:30 PM'],
    [['race-days', 0, 'first-post'], '13:30', '13:30'],
    [['race-days', 0, 'first-post'], 'noon', '12:00 PM'],
    [['race-days', 0, 'first-post'], '12 noon', '12:00 PM'],
    [['race-days', 0, 'first-post'], '6:30 in the evening', '6:30 PM'],
    [['race-days', 0, 'first-post'], 'half past six in the evening', '6:30 PM'],
    [['race-days', 0, 'first-post'], "7 o'clock at night", '7:00 PM'],
    [['race-days', 0, 'races'], '10', 10],
    [['race-days', 0, 'races'], '10 races', 10],
    [['race-days', 0, 'races'], 'ten races', 10],
    [['race-days', 0, 'races'], 'about 6', 6],
    [['race-days', 0, 'first-post'], 'Aug 3 2027 1pm', '1:00 PM'],
    [['race-days', 0, 'first-post'], 'Aug 3 at 13:30', '13:30'],
    [['climate', 0, 'month'], '7', 7],
    [['emergency', 'coordinates', 'longitude'], '90° 12\' 36" W', -90.21],
    [['place', 'latitude'], '40.5 N', 40.5],
    [['emergency', 'first-aid'], 'office\n\n stand ', ['office', 'stand']],
    [['equipment', 0, 'days'], 'July 20, 2027\n2027-07-21', ['2027-07-20', '2027-07-21']],
    [['equipment', 0, 'can'], 'grade draw', ['grade', 'draw']],
    [['lights'], 'true', true],
    [['revision'], '4', 4],
    [['revision'], '4b', '4b'],
    [['measurements', 0, 'of'], 'turn radius at the rail', 'oval.radius'],
  ] as const)('%j: %s is understood', (at, text, value) => {
    const found = typed(at, text)
    expect(found.fault).toBeUndefined()
    expect(found.value).toEqual(value)
  })

  it('that are taken otherwise than they were typed say how', () => {
    expect(typed(['race-days', 0, 'races'], 'about 6').shown).toBe('about 6 = 6')
    expect(typed(['race-days', 0, 'races'], '10 races').shown).toBe('10 races = 10')
    expect(typed(['race-days', 0, 'first-post'], 'Aug 3 2027 1pm').shown).toBe(
      'Aug 3 2027 1pm = 1:00 PM',
    )
    expect(typed(['race-days', 1, 'date'], 'Aug 13', 'us', '2027')).toMatchObject({
      value: '2027-08-13',
      shown: 'Aug 13 = 2027-08-13',
    })
    expect(typed(['race-days', 0, 'date'], 'Aug 13').fault).toMatch(/year is missing/)
  })

  it.each(
    [
      'one',
      'two',
      'three',
      'four',
      'five',
      'six',
      'seven',
      'eight',
      'nine',
      'ten',
      'eleven',
      'twelve',
    ].map((word, i) => [word, i + 1] as const),
  )('in words are numbers: %s', (word, number) => {
    expect(typed(['race-days', 0, 'races'], word).value).toBe(number)
    expect(typed(['equipment', 0, 'travel'], `${word} minutes`).value).toBe(`${number} minutes`)
  })

  it.each(["don't know", 'I dont know', 'not sure', 'no idea', 'nobody knows yet'])(
    'that nobody knows are told apart from none: %s',
    (text) => {
      expect(typed(['emergency', 'gate'], text)).toEqual({
        value: undefined,
        typed: '',
        isNotKnown: true,
      })
    },
  )

  it.each([
    [['race-days', 0, 'date'], '8/3/2027', /2027-08-03, or 2027-03-08/],
    [['race-days', 0, 'date'], 'soon', /a date such as/],
    [['race-days', 0, 'first-post'], 'after lunch', /a time of day such as/],
    [
      ['race-days', 0, 'first-post'],
      '6:30',
      /whether it is in the afternoon: write 6:30 PM, or 6:30 AM/,
    ],
    [['race-days', 0, 'races'], '400', /At most 40/],
    [['race-days', 0, 'races'], '2.5', /whole number/],
    [['place', 'latitude'], '95', /degrees, north positive, from -66 to 66/],
    [['place', 'latitude'], 'north', /should be a number/],
    [['contacts', 0, 'phone'], 'call Dale', /a telephone number$/],
    [['site-address'], 'our site', /a web address such as/],
  ] as const)('%j: %s has a fault in plain words', (at, text, fault) =>
    expect(typed(at, text).fault).toMatch(fault),
  )

  it.each([
    [['contacts', 0, 'phone'], '555-0101'],
    [['contacts', 0, 'name'], 'Dr. Wren Abbott'],
    [['place', 'town'], 'Larkmoor'],
    [['name'], 'Larkmoor County Fair'],
    [['emergency', 'address'], '1200 Fairground Lane, Larkmoor'],
    [['emergency', 'coordinates', 'latitude'], '40.82942'],
    [['emergency', 'hospital', 'name'], 'Ostmere Valley Hospital'],
  ] as const)('%j: %s of a demo is refused', (at, text) =>
    expect(typed(at, text).fault).toBe(copied),
  )

  it('that anybody may have are no demo’s', () => {
    expect(typed(['emergency', 'number'], '911').fault).toBeUndefined()
    expect(typed(['contacts', 0, 'name'], 'County ambulance').fault).toBeUndefined()
    expect(typed(['contacts', 0, 'phone'], '811').fault).toBeUndefined()
    expect(typed(['equipment', 0, 'name'], 'the Larkmoor harrow').fault).toBeUndefined()
  })
})

it('degrees are read as maps and telephones show them', () => {
  // Worked by hand: 49 ÷ 60 + 46 ÷ 3600 = 0.829444….
  expect(degreesMeant('40° 49\' 46" N')).toBe('40.82944')
  expect(degreesMeant('33 S')).toBe('-33')
  expect(degreesMeant('-89.08')).toBe('-89.08')
  expect(degreesMeant('near the barn')).toBe('near the barn')
})
