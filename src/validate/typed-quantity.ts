import { unitNames } from '../model/quantity/units.ts'

/** Every way to write a unit that is made of letters, the longest first. */
const unitPattern = [...unitNames, 'percent', '%']
  .filter((name) => /[\p{L}%]/u.test(name))
  .sort((one, other) => other.length - one.length)
  .map((name) => name.replace(/[/\\^$*+?.()|[\]{}]/g, '\\$&'))
  .join('|')

const typedNumber = new RegExp(
  `(?<![\\w.{-])\\d+(?:[.,/]\\d+)*\\s?(?:${unitPattern})(?![\\w\\p{L}])`,
  'u',
)

/** The first number with a unit that a text types, where it should name a figure or fact. */
export const typedQuantity = (text: string): string | undefined => typedNumber.exec(text)?.[0]
