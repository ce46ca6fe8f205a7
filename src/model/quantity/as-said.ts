import { numberInWords, partsInWords } from './words-of-numbers.ts'

/** What people put before or behind a number that they have not measured, as parts of a pattern. */
export const aboutBefore =
  '(?:about|around|roughly|approx(?:imately|\\.)?|circa|ca\\.?|c\\.|some|maybe|say|~|≈)'
export const aboutBehind = '(?:or so|more or less|roughly|approx\\.?|give or take)'

const before = new RegExp(`^${aboutBefore}\\s*(?=[\\d.½¼¾⅛⅜⅝⅞⅓⅔$€£]|[a-z])`, 'i')
const behind = new RegExp(`\\s*,?\\s*${aboutBehind}$`, 'i')

/** A number that somebody has not measured, without what says so. */
export function withoutAbout(text: string): { readonly text: string; readonly isRough: boolean } {
  const exact = text.trim().replace(before, '').replace(behind, '')
  return { text: exact, isRough: exact !== text.trim() }
}

const plain = (value: number): string => String(Number(value.toPrecision(12)))

const part = [...partsInWords.keys()].sort((a, b) => b.length - a.length).join('|')
const partFirst = new RegExp(`^(${part})(?:[ -](?:of )?an?|[ -]of)?[ -](?=[a-z])`, 'i')
const andPart = new RegExp(`^(\\d+|an?|one|two|three|four|five|six) and (${part}|\\d+/\\d+) `, 'i')
const unitAndPart = new RegExp(
  `^(\\d+|an?|one|two|three|four|five|six) ([a-z]+) and (${part}|\\d+/\\d+)$`,
  'i',
)

/** `an inch and a quarter`, `two and a half miles`. */
function mixed(text: string): string {
  const number = (word: string): string => {
    const lower = word.toLowerCase()
    return /^an?$/.test(lower) ? '1' : plain(numberInWords([lower])?.value ?? Number(lower))
  }
  const fraction = (said: string): string => partsInWords.get(said.toLowerCase()) ?? said
  return text
    .replace(unitAndPart, (_all, n: string, unit: string, f: string) =>
      [number(n), fraction(f), unit].join(' '),
    )
    .replace(andPart, (_all, n: string, f: string) => `${number(n)} ${fraction(f)} `)
}

/** The number at the beginning in digits, where it is said in words. */
function counted(text: string): string {
  const sign = /^[$€£]\s*/.exec(text)?.[0] ?? ''
  const rest = text.slice(sign.length)
  const first = partFirst.exec(rest)
  if (first)
    return `${sign}${partsInWords.get((first[1] ?? '').toLowerCase())} ${rest.slice(first[0].length)}`
  const words = rest.split(/\s+/)
  const found = numberInWords(words.map((word) => word.toLowerCase()))
  if (found) return `${sign}${[plain(found.value), ...words.slice(found.taken)].join(' ')}`
  return text.replace(/^an? (?=[a-z])/i, '1 ')
}

const manyOf =
  /^([$€£]\s*)?([\d.,]+)(\s*[a-z]*)\s*(?:\/|\bper\b|\ban?\b|\bfor\b)\s*(?:a\s+|an\s+)?(\d[\d,]*|hundred|thousand|million|k)\s*([a-z].*)$/i

/** So much for so many of a unit is a part of it for one: `$6 per thousand gallons` is `$0.006/gallons`. */
function forOne(text: string): string {
  const [, sign = '', amount = '', unit = '', many = '', of = ''] = manyOf.exec(text) ?? []
  if (of === '' || (sign === '' && unit.trim() === '')) return text
  const isThousand = many.toLowerCase() === 'k'
  const divisor = isThousand
    ? 1000
    : (numberInWords(['one', many.toLowerCase()])?.value ?? Number.NaN)
  const by = /^\d/.test(many) ? Number(many.replaceAll(',', '')) : divisor
  const value = Number(amount.replaceAll(',', '')) / by
  return Number.isFinite(value) && by > 1 ? `${sign}${plain(value)}${unit.trimEnd()}/${of}` : text
}

/**
 * A quantity as people say it in the words of one that is read: `forty feet` is `40 feet`, `half a
 * mile` `1/2 mile`, `3/4 of an inch` `3/4 inch`, `an inch and a quarter` `1 1/4 inch`, `$6 per thousand
 * gallons` `$0.006/gallons`. What says no more than it already did comes back as it is.
 */
export function asSaid(typed: string): string {
  const text = typed.trim().replaceAll(/\s+/g, ' ')
  const percent = text.replace(/\bper ?cent\b/i, '%')
  const of = percent.replace(/^([\d\s/.⁄½¼¾⅛⅜⅝⅞⅓⅔-]+) of an? (?=[a-z])/i, '$1 ')
  const both = of.replace(/^(\d+ ?(?:h|hours?|ft|feet|foot|lbs?|pounds?)) and (?=\d)/i, '$1 ')
  return forOne(counted(mixed(both)))
}

/** A rise over a length, as a board and a level show it: `2 1/2 in in 10 ft`. */
export function riseOf(text: string): { readonly rise: string; readonly run: string } | undefined {
  const [, rise = '', run = ''] =
    /^(.*\d.*?[a-z'"″′]\.?)\s+(?:in|per|over|for every)\s+(an?\s+\d.*|\d.*[a-z'"″′]\.?)$/i.exec(
      text.trim(),
    ) ?? []
  return rise === '' ? undefined : { rise, run: run.replace(/^an?\s+/i, '') }
}

/** A number alone that is said in words: `ten`, `three quarters`; nothing where it is none. */
export function inFigures(text: string): string | undefined {
  const said = text.trim().toLowerCase()
  const words = said.split(/\s+/)
  const found = numberInWords(words)
  return found && found.taken === words.length ? plain(found.value) : partsInWords.get(said)
}
