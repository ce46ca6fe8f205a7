/** A part of a degree: its number, and whether it is so many minutes or seconds. */
const parts =
  /^(\d+(?:\.\d+)?)\s*°?\s*(?:(\d+(?:\.\d+)?)\s*['′]\s*)?(?:(\d+(?:\.\d+)?)\s*["″]\s*)?$/

/**
 * Degrees as a map or a telephone shows them, as a plain number: `40° 49' 46" N`, `89.08 W`; south
 * and west are negative. What is nothing of the kind comes back as it is.
 */
export function degreesMeant(typed: string): string {
  const text = typed.trim().replace('−', '-')
  const side = /[nesw]$/i.exec(text)?.[0]?.toUpperCase()
  const rest = (side === undefined ? text : text.slice(0, -1)).trim()
  const [, degrees, minutes = '0', seconds = '0'] = parts.exec(rest) ?? []
  if (degrees === undefined) return text
  if (side === undefined && minutes === '0' && seconds === '0') return degrees
  const value = Number(degrees) + Number(minutes) / 60 + Number(seconds) / 3600
  const rounded = String(Math.round(value * 1e5) / 1e5)
  return side === 'S' || side === 'W' ? `-${rounded}` : rounded
}
