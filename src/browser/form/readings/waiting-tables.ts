import { groupsAt } from '../../../edit/form/data.ts'
import { waiting, waitingIn } from '../../../edit/readings/fitting.ts'
import type { GridReading } from '../../../edit/readings/table.ts'
import { fill } from '../../../model/pattern.ts'
import type { Sitting } from '../sitting.ts'
import { placeWithUnit, tableOf } from './spot.ts'

/** Which stations of some readings have too few to count; empty where none has, or all wait. */
export function waitingSaid(sitting: Sitting, readings: readonly GridReading[]): string {
  const late = waiting(readings)
  if (late.length === 0 || late.length === readings.length) return ''
  const stations = [...new Set(late.map(({ station }) => placeWithUnit(sitting, station)))]
  return fill(sitting.said.form.says.readings.waiting, { stations: stations.join(', ') })
}

/** Tables with readings that are left out until their station has more, by their entries. */
export const waitingTables = (
  sitting: Sitting,
): readonly { readonly at: string; readonly words: string }[] =>
  groupsAt(sitting.draft().data, ['surveys']).flatMap((entry, i) => {
    const table = tableOf(sitting, String(entry['file']))
    const late = table ? waitingIn(table) : []
    // Where all of them wait, the table itself has a fault, which is told.
    if (!table || late.length === 0 || late.length === table.readings.length) return []
    const days = [...new Set(late.map(({ date }) => date))]
    const words = days.map((day) => {
      const of = table.readings.filter(({ date }) => date === day)
      return waitingSaid(sitting, of) || sitting.said.form.says.readings.few
    })
    return [{ at: `surveys.${i}`, words: words.join(' ') }]
  })
