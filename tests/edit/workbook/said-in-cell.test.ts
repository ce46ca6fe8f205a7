import { describe, expect, it } from 'vitest'
import { layOut } from '../../../src/edit/workbook/lay-out.ts'
import type { Problem } from '../../../src/model/problem.ts'
import {
  cellName,
  filledIn,
  nowhere,
  type Typed,
  takeWorkbook,
} from '../../support/filled-workbooks.ts'

/** What a fair must say. */
const needed: readonly Typed[] = [
  { sheet: 'Fair', at: 'name', text: 'Our County Fair' },
  { sheet: 'Fair', at: 'place.town', text: 'Hollow Creek' },
  { sheet: 'Fair', at: 'units', text: 'us' },
  { sheet: 'Fair', at: 'paper', text: 'letter' },
  { sheet: 'Oval', at: 'oval.lap', text: '2,640 ft' },
  { sheet: 'Oval', at: 'oval.straight', text: '600 ft' },
  { sheet: 'Cushion and base', at: 'cushion.material', text: 'stone-dust' },
]

async function typedInto(...typed: readonly Typed[]) {
  const bytes = await filledIn({ data: {}, tables: {} }, 'us', [...needed, ...typed])
  const taken = takeWorkbook(bytes, nowhere)
  return { taken, errors: taken.problems.filter((p) => p.severity === 'error') }
}

const answerOf = ({ asked }: Awaited<ReturnType<typeof typedInto>>['taken'], at: string): unknown =>
  asked.find(({ path }) => path.join('.') === at)?.value

describe('what people say in a cell', () => {
  it.each([
    ['Fair', 'id', 'Pell Hollow Fair', 'pell-hollow-fair'],
    ['Fair', 'id', 'id: pell-hollow', 'pell-hollow'],
    ['Fair', 'place.time-zone', 'Eastern', 'America/New_York'],
    ['Fair', 'place.time-zone', 'Mountain time', 'America/Denver'],
    ['Fair', 'currency', 'dollars', 'USD'],
    ['Fair', 'language', 'English', 'en'],
    ['Fair', 'binder.sides', 'both', 2],
    ['Fair', 'place.latitude', '40.6 N', 40.6],
    ['Fair', 'place.latitude', 'latitude: 40.6', 40.6],
    ['Emergency', 'emergency.coordinates.latitude', `40°36'22" N`, 40.60611],
    ['Water and crew', 'crew.race-day', '4 volunteers', 4],
    ['Water and crew', 'water.hours', '8 am to 6 pm', '10 h'],
    ['Oval', 'oval.width.straights', 'about 60 feet', 'about 60 feet'],
    ['Oval', 'oval.cross-fall.straights', '2 1/2 in in 10 ft', '2 1/2 in in 10 ft'],
    ['Prices', 'prices.water', '$6 per thousand gallons', '$0.006/gallons'],
    ['Prices', 'prices.material', '$24 a ton', '$24 a ton'],
    ['Prices', 'delivery.lead-time', 'two weeks', '2 weeks'],
    ['Cushion and base', 'cushion.unit-weight.loose', '1.35 tons per yard', '1.35 tons per yard'],
    ['Cushion and base', 'cushion.depth.found', '1-1/4', '1-1/4 in'],
    ['Water and crew', 'water.fill-flow', 'a hundred gallons a minute', '100 gallons a minute'],
  ])('%s, %s: "%s" is %s', async (sheet, at, text, value) => {
    const other =
      at === 'emergency.coordinates.latitude'
        ? [{ sheet, at: 'emergency.coordinates.longitude', text: `82°24'10" W` }]
        : []
    const { taken, errors } = await typedInto({ sheet, at, text }, ...other)
    expect(errors).toEqual([])
    expect(answerOf(taken, at) ?? answerOf(taken, 'emergency.coordinates.latitude')).toBe(value)
  })

  it('is told where it can mean two things', async () => {
    const day = [
      { sheet: 'Race days', at: 'day', line: 0, text: '8/12/2027' },
      { sheet: 'Race days', at: 'races', line: 0, text: '9 races' },
    ]
    const early = await typedInto(...day, {
      sheet: 'Race days',
      at: 'first post',
      line: 0,
      text: '1:30',
    })
    expect(early.errors.map((p) => p.hint)).toEqual([
      'write 1:30 PM, or 1:30 AM where it is at night',
    ])
  })

  it('names a procedure by its title, and a role by what it was taken for', async () => {
    const { taken, errors } = await typedInto(
      {
        sheet: 'Your notes',
        at: 'procedure',
        line: 0,
        text: nowhere.procedures.get('harrow') ?? '',
      },
      { sheet: 'Your notes', at: 'what you add', line: 0, text: 'Roll it first.' },
      { sheet: 'People to call', at: 'what they are there for', line: 0, text: 'judge' },
      { sheet: 'People to call', at: 'name', line: 0, text: 'Ann Doe' },
      { sheet: 'People to call', at: 'telephone', line: 0, text: '740-555-4163' },
    )
    expect(errors).toEqual([])
    expect(taken.problems.map((p) => p.message)).toContain('"judge" is taken for presiding-judge')
    const unknown = await typedInto(
      { sheet: 'Your notes', at: 'procedure', line: 0, text: 'polishing' },
      { sheet: 'Your notes', at: 'what you add', line: 0, text: 'Roll it first.' },
    )
    expect(unknown.errors.map((p) => p.place.cell?.name)).toEqual(['B5'])
  })
})

describe('a hint', () => {
  /** What a hint says to type: behind "write", up to what is said of it. */
  const saidToType = (hint: string): string | undefined =>
    /^(?:write|type)(?: it as in| it, such as| digits alone:?| it in digits:)? ((?:[^;,]|,(?=\d{3}))+?)(?: alone)?(?:[;,] .*)?$/
      .exec(hint)?.[1]
      ?.replace(/^"(.*)"$/, '$1')

  const wrong: readonly Typed[] = [
    ...['id', 'place.time-zone', 'currency', 'language', 'place.latitude', 'site-address'].flatMap(
      (at) =>
        ['Pell Hollow!', '12', 'x: y', 'about that'].map((text) => ({ sheet: 'Fair', at, text })),
    ),
    ...['oval.lap', 'oval.width.straights', 'oval.radius'].flatMap((at) =>
      ['12,5 ft', '55', '58 to 62 ft', 'wide', '“60 ft”', '60 000 ft', 'sixty ft'].map((text) => ({
        sheet: 'Oval',
        at,
        text,
      })),
    ),
    ...['prices.fuel', 'prices.labor'].flatMap((at) =>
      ['3,89', '$3.89', '4.10/gal'].map((text) => ({ sheet: 'Prices', at, text })),
    ),
  ]

  const laid = layOut({ data: {}, tables: {} }, 'us', nowhere.procedures)
  const isOf =
    (one: Typed) =>
    ({ place }: Problem): boolean =>
      place.cell?.sheet === one.sheet && place.cell.name === cellName(laid, one)

  /** Each has a cell, and as few workbooks as may be are filled in: a cell holds one text. */
  function workbooksOf(typed: readonly Typed[]): readonly (readonly Typed[])[] {
    const books: Typed[][] = []
    for (const one of typed) {
      const free = books.find((book) => book.every(({ at }) => at !== one.at))
      if (free) free.push(one)
      else books.push([one])
    }
    return books
  }

  /** What the hints for a cell say to type that is one text and no choice. */
  const offeredTo = (one: Typed, errors: readonly Problem[]): readonly string[] =>
    errors
      .filter(isOf(one))
      .flatMap(({ hint = '' }) => saidToType(hint) ?? [])
      .filter((text) => /^[-$\d]/.test(text) && !/ or /.test(text))

  it('names no key of the file, and what it says to type is taken', async () => {
    const faults: string[] = []
    const offered: Typed[] = []
    for (const book of workbooksOf(wrong)) {
      const { errors } = await typedInto(...book)
      for (const one of book) {
        const key = new RegExp(`\\b${one.at.split('.').at(-1)}: `)
        for (const { hint = '' } of errors.filter(isOf(one)))
          if (key.test(hint)) faults.push(`${one.at} "${one.text}": ${hint}`)
        offered.push(...offeredTo(one, errors).map((text) => ({ ...one, text })))
      }
    }
    for (const book of workbooksOf(offered)) {
      const { errors } = await typedInto(...book)
      const again = errors.filter((p) => p.code !== 'quantity/range' && !/^oval/.test(p.code))
      faults.push(...again.map(({ source, message }) => `${source}: ${message}`))
    }
    expect(faults).toEqual([])
    expect(offered.length).toBeGreaterThan(0)
  })
})
