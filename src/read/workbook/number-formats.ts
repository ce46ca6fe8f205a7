import { dayOf } from '../../model/day.ts'
import { readXml } from './xml-elements.ts'

/** How a workbook shows a number, as far as it changes what the number means. */
export type NumberFormat =
  | { readonly is: 'plain'; readonly unit: string }
  | { readonly is: 'share' }
  | { readonly is: 'day' | 'time' | 'moment' }

const plain: NumberFormat = { is: 'plain', unit: '' }

/** Formats that have a number and no code of their own (ECMA-376-1, 18.8.30). */
function builtIn(id: number): NumberFormat {
  if (id === 9 || id === 10) return { is: 'share' }
  if ((id >= 14 && id <= 17) || (id >= 27 && id <= 31) || id === 36 || (id >= 50 && id <= 58))
    return { is: 'day' }
  if (id === 22) return { is: 'moment' }
  return (id >= 18 && id <= 21) || (id >= 32 && id <= 35) || (id >= 45 && id <= 47)
    ? { is: 'time' }
    : plain
}

/** What a code such as `0.0%`, `m/d/yyyy` or `0.00" ft"` makes of a number. */
function formatOfCode(code: string): NumberFormat {
  const [first = ''] = code.split(';')
  const unit = /"\s*([^"]*?)\s*"\s*$/.exec(first)?.[1] ?? ''
  const bare = first.replace(/"[^"]*"|\\.|_.|\*./g, '').replace(/\[(?!h|m|s)[^\]]*\]/gi, '')
  if (/[yd]/i.test(bare) && !/^general$/i.test(bare))
    return { is: /[hs]/i.test(bare) ? 'moment' : 'day' }
  if (/[hs]/i.test(bare) || /^m+$/i.test(bare)) return { is: /[hs]/i.test(bare) ? 'time' : 'day' }
  return bare.includes('%') ? { is: 'share' } : { is: 'plain', unit }
}

/** The formats of a workbook's styles, by the number with which cells name a style. */
export function readFormats(bytes: Uint8Array): readonly NumberFormat[] {
  const codes = new Map<number, string>()
  const formats: NumberFormat[] = []
  let inCells = false
  readXml(bytes, {
    open: (name, attributes) => {
      if (name === 'numFmt')
        codes.set(Number(attributes['numFmtId']), attributes['formatCode'] ?? '')
      if (name === 'cellXfs') inCells = true
      if (name !== 'xf' || !inCells) return
      const id = Number(attributes['numFmtId'] ?? 0)
      const code = codes.get(id)
      formats.push(code === undefined ? builtIn(id) : formatOfCode(code))
    },
    close: (name) => {
      if (name === 'cellXfs') inCells = false
    },
  })
  return formats
}

/** A number as it is typed: fifteen digits, which is what a spreadsheet keeps, and no powers of ten. */
function plainText(value: number): string {
  const rounded = Number(value.toPrecision(15))
  const text = String(rounded)
  return text.includes('e') ? rounded.toFixed(20).replace(/\.?0+$/, '') : text
}

/** Days from 1 January 1970 to the day that a workbook counts as nought. */
const start1900 = -25_569
const start1904 = -24_107

/** Hours and minutes of a part of a day, to the nearest minute. */
function clockOf(part: number): string {
  const minutes = Math.round(part * 24 * 60)
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`
}

/**
 * A number of a workbook as a person types it: days as 2027-06-12, times as 13:30, shares as 6.5 %.
 * @param from1904 Whether the workbook counts days from 1904 on.
 */
export function shownNumber(
  value: number,
  format: NumberFormat,
  from1904: boolean,
): { readonly text: string; readonly kind: 'number' | 'day' } {
  if (format.is === 'plain')
    return {
      text: `${plainText(value)}${format.unit === '' ? '' : ` ${format.unit}`}`,
      kind: 'number',
    }
  if (format.is === 'share') return { text: `${plainText(value * 100)} %`, kind: 'number' }
  if (format.is === 'time' || (value >= 0 && value < 1))
    return { text: clockOf(value), kind: 'day' }
  const whole = Math.floor(value)
  // Sheets that count from 1900 have a 29 February in that year, which never was.
  const day = dayOf(whole + (from1904 ? start1904 : start1900) + (from1904 || whole >= 60 ? 0 : 1))
  const part = value - whole
  return { text: part < 1 / 2880 ? day : `${day} ${clockOf(part)}`, kind: 'day' }
}
