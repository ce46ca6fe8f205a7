/**
 * An item of a list that is as long as another.
 * @throws RangeError when it is not.
 */
export function itemAt<T>(list: readonly T[], i: number): T {
  const item = list[i]
  if (item === undefined) throw new RangeError(`there is no item ${i} of ${list.length}`)
  return item
}
