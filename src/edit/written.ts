import { parse } from 'yaml'

/** What can stand in a facility file. */
export type Value = string | number | boolean | readonly Value[] | { readonly [key: string]: Value }

const isList = (value: Value): value is readonly Value[] => Array.isArray(value)

/**
 * A text that no reader of YAML takes for anything else: one word that stands for itself, or several
 * that begin with a letter or digit. Most are, and reading them all would take long.
 */
const isPlain = (text: string): boolean =>
  /^[A-Za-z0-9][\w./%°' -]*$/.test(text) &&
  (/ /.test(text) ||
    (/^[A-Za-z]/.test(text) && !/^(?:null|true|false|yes|no|on|off|[yn])$/i.test(text)))

/** A text that YAML would read otherwise than it stands, or that people expect in quotes. */
function needsQuotes(text: string, inBraces: boolean): boolean {
  if (text === '' || text !== text.trim() || /[\n\t\r]/.test(text)) return true
  if (/^[-?:,[\]{}#&*!|>'"%@`]/.test(text) || /:(\s|$)|\s#/.test(text)) return true
  if (inBraces && /[,[\]{}]/.test(text)) return true
  // A time of day is a number to the base of sixty for other readers of YAML.
  if (/^\d+:\d/.test(text)) return true
  if (isPlain(text)) return false
  try {
    return parse(text) !== text
  } catch {
    return true
  }
}

function textOf(text: string, inBraces: boolean): string {
  if (!needsQuotes(text, inBraces)) return text
  const isSimple = !/["\\\n\t\r]/.test(text)
  return !isSimple && !/['\n\t\r]/.test(text) ? `'${text}'` : JSON.stringify(text)
}

/** A key as it is typed. */
export const writtenKey = (key: string, inBraces: boolean): string => textOf(key, inBraces)

/**
 * A value as it is typed on one line: texts in quotes only where they need them, groups and lists in
 * brackets.
 */
export function written(value: Value, inBraces = false): string {
  if (typeof value === 'string') return textOf(value, inBraces)
  if (typeof value !== 'object') return String(value)
  if (isList(value)) return `[${value.map((v) => written(v, true)).join(', ')}]`
  const parts = Object.entries(value).map(
    ([key, v]) => `${writtenKey(key, true)}: ${written(v, true)}`,
  )
  return parts.length === 0 ? '{}' : `{ ${parts.join(', ')} }`
}

/** Whether a value reads best over several lines: a group with a group or a list of groups in it. */
export const isDeep = (value: Value): boolean =>
  typeof value === 'object' &&
  Object.values(value).some((inner) => typeof inner === 'object' && !isFlat(inner))

const isFlat = (value: Value): boolean =>
  isList(value) && value.every((inner) => typeof inner !== 'object')
