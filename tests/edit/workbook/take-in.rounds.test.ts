import * as fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { baseFor } from '../../../src/cli/workbook/standing.ts'
import { splice } from '../../../src/edit/splice.ts'
import { type Base, baseSheet, baseTexts } from '../../../src/edit/workbook/base.ts'
import { baseAfter } from '../../../src/edit/workbook/base-after.ts'
import { layOut } from '../../../src/edit/workbook/lay-out.ts'
import { type Standing, type TakenIn, takeIn } from '../../../src/edit/workbook/take-in.ts'
import { readYaml } from '../../../src/read/read-yaml.ts'
import { standingOf } from '../../support/filled-workbooks.ts'
import { rawWorkbook, textSheet } from '../../support/workbooks.ts'

type Rows = { readonly title: string; readonly rows: string[][] }
type Watched = {
  readonly sheet: string
  readonly cell: string
  readonly row: number
  readonly column: number
  readonly path: readonly (string | number)[]
  /** Texts that can be typed there; those with an exclamation mark in front cannot be taken in. */
  readonly texts: readonly string[]
}

/** Cells in which somebody types, on sheets of entries and of lists; contacts keep role and name. */
const watched: readonly Watched[] = [
  entry('Emergency', 'emergency.address', ['77 Mill Road', 'County Road 12', '']),
  entry('Prices', 'prices.fuel', ['$4.30/gal', '$4.10/gal', '$3.95/gal', '!dear', '']),
  entry('Prices', 'prices.labor', ['$20/h', '$22/h', '!volunteers 3', '']),
  entry('Oval', 'oval.width.turns', ['70 ft', '72 ft', '!wide', '']),
  contact(0, 'phone', 3, ['740-555-4161', '740-555-9999', '!none', '!']),
  contact(0, 'note', 4, ['no calls after 9', 'only mornings', '']),
  contact(1, 'note', 4, ['ask twice', '']),
]

let standing: Standing
let laid: readonly Rows[]

function entry(sheet: string, dotted: string, texts: readonly string[]): Watched {
  return { sheet, cell: dotted, row: -1, column: 1, path: dotted.split('.'), texts }
}

function contact(line: number, key: string, column: number, texts: readonly string[]): Watched {
  const path = ['contacts', line, key]
  return { sheet: 'People to call', cell: '', row: 4 + line, column, path, texts }
}

/** A fair with little, so that hundreds of rounds take no time. */
const fair = `id: tiny
name: Tiny Fair
place: { town: Nowhere, latitude: 41, longitude: -89, time-zone: America/Chicago }
units: us
paper: letter
oval:
  lap: 2,640 ft
  straight: 600 ft
  width: { straights: 60 ft, turns: 70 ft }
cushion:
  material: stone-dust
contacts:
  - { role: superintendent, name: Ann Doe, phone: 740-555-4161, note: no calls after 9 }
  - { role: ambulance, name: Town Squad, phone: 740-555-4167 }
emergency:
  address: 1200 County Road 12
  stops-racing: [superintendent]
prices:
  fuel: $4.10/gal
`

beforeAll(() => {
  standing = standingOf(fair)
  laid = layOut(baseFor(standing), 'us', standing.procedures)
    .sheets.filter(({ title }) => ['Emergency', 'Prices', 'Oval', 'People to call'].includes(title))
    .map(({ title, rows }) => ({
      title,
      rows: rows.map((row) => row.map((cell) => cell?.text ?? '')),
    }))
})

const sheetOf = (sheets: readonly Rows[], title: string): string[][] =>
  sheets.find((s) => s.title === title)?.rows ?? []

const rowOf = (sheets: readonly Rows[], { sheet, cell, row }: Watched): number =>
  row >= 0 ? row : sheetOf(sheets, sheet).findIndex((texts) => texts[4] === cell)

const nameOf = (sheets: readonly Rows[], one: Watched): string =>
  `${'ABCDEFG'[one.column]}${rowOf(sheets, one) + 1}`

function take(sheets: readonly Rows[], base: Base, now: Standing): TakenIn {
  const bytes = rawWorkbook([
    ...sheets.map(({ title, rows }) => textSheet(title, rows)),
    textSheet(
      baseSheet,
      baseTexts(base).map((text) => [text]),
    ),
  ])
  return takeIn({ name: 'facility.xlsx', bytes, text: undefined }, now)
}

const saying = (now: Standing, text: string): Standing => ({
  ...now,
  tree: readYaml({ path: 'facility.yaml', text }).value,
})

const valueAt = (data: unknown, path: readonly (string | number)[]): unknown =>
  path.reduce<unknown>((at, step) => (at as Record<string | number, unknown>)?.[step], data)

/** Cells that say other than the file, and of which nothing was told. */
function silent(sheets: readonly Rows[], taken: TakenIn, before: string): string[] {
  const data: unknown = parse(taken.text ?? before)
  const told = new Set(
    taken.problems.flatMap(({ place, severity }) => [
      `${place.cell?.sheet}!${place.cell?.name}`,
      // A line with a fault is left out as a whole.
      ...(severity === 'error' ? [`${place.cell?.sheet}!${place.line}`] : []),
    ]),
  )
  return watched.flatMap((one) => {
    const typed = sheetOf(sheets, one.sheet)[rowOf(sheets, one)]?.[one.column] ?? ''
    const said = valueAt(data, one.path)
    const name = `${one.sheet}!${nameOf(sheets, one)}`
    return (typed === '' ? undefined : typed) === said ||
      told.has(name) ||
      (one.row >= 0 && told.has(`${one.sheet}!${one.row + 1}`))
      ? []
      : [`${name} says "${typed}", the file ${JSON.stringify(said)}`]
  })
}

/** What happens between two take-ins: cells are typed into, entries of the file are changed. */
const round = fc.record({
  typed: fc.array(fc.tuple(fc.nat({ max: 6 }), fc.nat({ max: 4 })), { maxLength: 4 }),
  edited: fc.array(fc.tuple(fc.nat({ max: 6 }), fc.nat({ max: 4 })), { maxLength: 2 }),
  noted: fc.boolean(),
})

/** Plays rounds; the first cell that is neither entered nor told of. */
function played(rounds: readonly { typed: number[][]; edited: number[][]; noted: boolean }[]) {
  const sheets = laid.map(({ title, rows }) => ({ title, rows: rows.map((row) => [...row]) }))
  let text = standing.tree?.file.text ?? ''
  let base = baseFor(standing)
  for (const { typed, edited, noted } of rounds) {
    for (const [which = 0, what = 0] of typed) {
      const one = watched[which % watched.length] as Watched
      const row = sheetOf(sheets, one.sheet)[rowOf(sheets, one)]
      if (row) row[one.column] = (one.texts[what % one.texts.length] ?? '').replace(/^!/, '')
    }
    for (const [which = 0, what = 0] of edited) {
      const { path, texts } = watched[which % watched.length] as Watched
      const value = texts[what % texts.length] ?? ''
      if (value.startsWith('!')) continue
      const made = splice(text, { path, value: value === '' ? undefined : value })
      if (made.ok) text = made.text
    }
    const taken = take(sheets, base, saying(standing, text))
    const wrong = silent(sheets, taken, text)
    if (taken.text === undefined) return ['nothing was taken in']
    if (wrong.length > 0) return wrong
    text = taken.text
    if (noted) base = baseAfter(taken.found, taken.madeOf, baseFor(saying(standing, text)))
  }
  return []
}

describe('a workbook that is taken in again and again', () => {
  it('leaves the file saying what the cells say, or tells of each cell that it does not', () => {
    fc.assert(
      fc.property(fc.array(round, { minLength: 1, maxLength: 5 }), (rounds) => {
        expect(played(rounds)).toEqual([])
      }),
      { numRuns: 100, seed: 1, endOnFailure: true },
    )
  })

  it('takes back what was entered while another cell could not be read', () => {
    const [, , , , phone] = watched as readonly [Watched, Watched, Watched, Watched, Watched]
    const typed = (text: string) =>
      laid.map(({ title, rows }) => ({
        title,
        rows: rows.map((row, i) =>
          title === phone.sheet && i === phone.row ? row.with(phone.column, text) : row,
        ),
      }))
    const wrong = take(typed('740-555-9999'), baseFor(standing), standing)
    const later = saying(standing, wrong.text ?? '')
    const base = baseAfter(wrong.found, wrong.madeOf, baseFor(later))
    const back = take(laid, base, later)
    expect(back.asked.map(({ path, value }) => [path.join('.'), value])).toEqual([
      ['contacts.0.phone', valueAt(parse(standing.tree?.file.text ?? ''), phone.path)],
    ])
    // Where nothing could be noted, the cell is told of.
    const stale = take(laid, baseFor(standing), later)
    expect(stale.asked).toEqual([])
    expect(stale.problems.map(({ place, message }) => [place.cell?.name, message])).toEqual([
      ['D5', expect.stringContaining('the facility says "740-555-9999" by now')],
    ])
  })
})
