import { escapeHtml } from './escape-html.ts'

const noBreak = '\u00a0'

/** `2 1/4` with the fraction set as one figure. */
function numberHtml(number: string): string {
  const m = /^(?:(−?[\d,]+)\s|(−))?(\d+\/\d+)$/.exec(number)
  if (!m) return escapeHtml(number).replaceAll(' ', noBreak)
  const [, whole, sign = '', fraction = ''] = m
  const set = `<span class="frac">${fraction}</span>`
  // The space keeps copied and read-aloud text from running 2 and 1/4 together; the style sheet
  // closes it up.
  return whole === undefined
    ? `${sign}${set}`
    : `${whole}<span class="thin">${noBreak}</span>${set}`
}

/** `1 h 25` set large: the unit between its numbers as small as the unit behind them. */
export function largeNumberHtml(number: string): string {
  const m = /^(\d+) (\p{L}+) (\d+)$/u.exec(number)
  if (!m) return numberHtml(number)
  const [, first = '', unit = '', second = ''] = m
  return `${first}${noBreak}<span class="unit">${escapeHtml(unit)}</span>${noBreak}${second}`
}

/** `2 1/4 in` as it stands in running text: never broken between number and unit. */
export function quantityHtml(text: string): string {
  const m = /^(−?(?:[\d,]+\s)?\d+\/\d+)(?:\s(.*))?$/.exec(text)
  if (!m) return escapeHtml(text).replaceAll(' ', noBreak)
  return `${numberHtml(m[1] ?? '')}${m[2] === undefined ? '' : `${noBreak}${escapeHtml(m[2]).replaceAll(' ', noBreak)}`}`
}
