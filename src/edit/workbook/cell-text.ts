import type { Field } from './fields.ts'
import { workbookWords } from './subjects.ts'

/** What stands at the steps of a path; undefined where nothing does. */
export function valueAt(data: unknown, path: readonly (string | number)[]): unknown {
  let at = data
  for (const step of path) {
    if (typeof at !== 'object' || at === null) return undefined
    at = (at as Readonly<Record<string | number, unknown>>)[step]
  }
  return at
}

/** Several values in a cell; a value that holds the mark between them makes them stand in lines. */
function severalText(values: readonly unknown[]): string {
  const texts = values.map(String)
  return texts.some((text) => text.includes(';')) ? `${texts.join('\n')}\n` : texts.join('; ')
}

/** A value of the facility file as it stands in a cell. */
export function cellText(value: unknown): string {
  if (value === undefined || value === null) return ''
  if (typeof value === 'boolean') return value ? workbookWords.yes : workbookWords.no
  return Array.isArray(value) ? severalText(value) : String(value)
}

/** The values of a cell that may hold several. */
export function severalOf(text: string, { choices }: Pick<Field, 'choices'>): readonly string[] {
  const mark = /[\r\n]/.test(text) ? /[\r\n]+/ : choices.length > 0 ? /[;,]/ : /;/
  return text
    .split(mark)
    .map((part) => part.trim())
    .filter((part) => part !== '')
}
