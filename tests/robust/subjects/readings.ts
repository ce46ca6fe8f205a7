import { withDay, withPlace, withReading } from '../../../src/edit/readings/change.ts'
import { readingTable, type Spot } from '../../../src/edit/readings/table.ts'
import type { Chance } from '../chance.ts'
import { hostileTexts, oddDays, oddNumbers } from '../mutations/hostile.ts'
import { mutate } from '../mutations/mutate.ts'
import { saidByChance } from '../mutations/said.ts'
import type { Subject } from './subject.ts'

type Table = NonNullable<ReturnType<typeof readingTable>>

/** A place that is read already, or one that is not. */
function spotOf({ readings }: Table, chance: Chance): Spot {
  if (readings.length > 0 && chance.happens(0.6)) return chance.oneOf(readings)
  return {
    date: chance.oneOf(['2027-06-10', '2027-06-12', '2026-05-01']),
    station: chance.below(3000) / 4,
    offset: chance.below(80) / 4,
  }
}

const typedOf = (chance: Chance): string | undefined => {
  if (chance.happens(0.15)) return undefined
  if (chance.happens(0.5)) return `${chance.below(40) / 8}${chance.oneOf(['', ' in', ' mm', '"'])}`
  return chance.happens(0.5)
    ? saidByChance(chance)
    : chance.oneOf(chance.oneOf([hostileTexts, oddNumbers, oddDays]))
}

function change(table: Table, chance: Chance): string {
  const spot = spotOf(table, chance)
  const kind = chance.below(10)
  if (kind === 0) return withDay(table, spot.date, chance.oneOf(['2027-06-11', ...oddDays]))
  if (kind > 1) return withReading(table, spot, typedOf(chance))
  const column = chance.oneOf(['station', 'offset'] as const)
  return withPlace(table, spot.date, { column, from: spot[column], to: chance.below(900) / 4 })
}

const linesOf = (text: string): readonly string[] => text.trimEnd().split(/\r?\n/)

/** Whether no more than one line is another, is gone or is new. */
function isOneLine(before: readonly string[], after: readonly string[]): boolean {
  const most = Math.min(before.length, after.length)
  let [head, foot] = [0, 0]
  while (head < most && before[head] === after[head]) head++
  while (foot < most - head && before.at(-1 - foot) === after.at(-1 - foot)) foot++
  return Math.max(before.length, after.length) - head - foot <= 1
}

/** Readings typed into the grid, over a table that somebody may have written: no other line changes. */
export const readings: Subject = async ({ facilities }, chance) => {
  const file = chance.oneOf(['depths.csv', 'levels.csv'])
  const bytes = facilities.shaken.get(file) ?? Buffer.alloc(0)
  const { file: mutated, by } = chance.happens(0.5)
    ? { file: bytes, by: ['typed'] }
    : mutate(bytes, 'table', chance)
  const system = chance.oneOf(['us', 'metric'] as const)
  let text = mutated.toString('utf8')
  const faults: string[] = []
  for (let i = 1 + chance.below(4); i > 0; i--) {
    const table = readingTable(text, system)
    if (!table) return { file, by, ending: i > 3 ? 'refused' : 'made', faults }
    const at = spotOf(table, chance)
    const typed = typedOf(chance)
    const one = withReading(table, at, typed)
    if (!isOneLine(linesOf(text), linesOf(one)))
      faults.push(`changed other lines: ${JSON.stringify(typed)}`)
    text = change(table, chance)
  }
  return { file, by, ending: 'made', faults }
}
