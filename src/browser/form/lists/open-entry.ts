import type { Path } from '../../../read/read-yaml.ts'

/** Which entry of each list is open, by the place of the list. */
const open = new Map<string, number>()

export const openEntryOf = (list: Path): number | undefined => open.get(list.join('.'))

/** Opens an entry of a list, or none; one beyond the last is a new one. */
export function openEntry(list: Path, index: number | undefined): void {
  if (index === undefined) open.delete(list.join('.'))
  else open.set(list.join('.'), index)
}
