import type { Engine } from '../../compute/engine/engine.ts'
import { factPathOf } from '../../compute/uses/ids.ts'
import { dayNumber, dayOf, monthOf } from '../../model/day.ts'
import type { FactPath } from '../../model/fact-spec.ts'
import type { Quantity } from '../../model/quantity/read-quantity.ts'
import type { ComposeContext } from '../context.ts'

/** The middle of a month. */
const middle = (month: number): number => dayNumber(`2027-${String(month).padStart(2, '0')}-15`)

/** The facility as it is in one month of the year; `own` is the month of the fair. */
export type MonthEngine = { readonly month: number; readonly own: boolean; readonly engine: Engine }

/** The facility in each month whose climate it gives, in the order of the year. */
export function monthEngines({
  engine,
  facility,
}: Pick<ComposeContext, 'engine' | 'facility'>): readonly MonthEngine[] {
  const fairDay = engine.si('fair.day')
  return (facility.file.climate ?? [])
    .toSorted((a, b) => a.month - b.month)
    .map(({ month, ...climate }) => {
      const given = Object.entries(climate).map(([key, value]): [FactPath, number] => [
        factPathOf(`climate.${key}`),
        (value as unknown as Quantity).si,
      ])
      const own = fairDay !== undefined && monthOf(dayOf(fairDay)) === month
      // The month of the fair stands for its first race day, as all other figures do.
      const day = own ? fairDay : middle(month)
      return {
        month,
        own,
        engine: engine.vary(new Map<FactPath, number>([...given, ['fair.day', day]])),
      }
    })
}
