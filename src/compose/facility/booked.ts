import { fill } from '../../model/pattern.ts'
import type { FacilityFile } from '../../validate/schemas/facility.ts'
import { type Dating, shortDate } from '../dates.ts'

type Entry = NonNullable<FacilityFile['equipment']>[number]

/** "here on Tue, Jul 20 only", of a machine that has its days; undefined where it is here always. */
export const bookedDays = (machine: Entry | undefined, dating: Dating): string | undefined =>
  machine?.days &&
  fill(dating.library.words.procedure.booked, {
    days: [...machine.days]
      .sort()
      .map((day) => shortDate(day, dating))
      .join('; '),
  })
