import { baseLanguage } from '../../model/language.ts'
import type { FacilityFile } from '../schemas/facility.ts'

/** The demo fairs, which alone may have what is theirs, by id. */
const demos: Readonly<Record<string, string>> = {
  larkmoor: 'Larkmoor County Fair',
  brambleford: 'Brambleford Agricultural Society',
  ostmere: 'Ostmere Midsummer Fair',
}

/** Whether a facility is one of the demos: an id alone may have been left over. */
export const isDemo = ({
  id,
  name,
  language = baseLanguage,
}: Pick<FacilityFile, 'id' | 'name' | 'language'>): boolean =>
  // In another language the fair has another name.
  demos[id] === name || (demos[id] !== undefined && language !== baseLanguage)

/** Ids of the demos, which are those of their towns too. */
export const demoIds: readonly string[] = Object.keys(demos)
