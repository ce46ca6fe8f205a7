import { type EntryAbout, entryAbout, factAt } from '../../model/entry-about.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { sieveNames } from '../../model/sieves.ts'
import { choicesOf, elementOf, shapeOf, typeOf } from '../../validate/schema-advice/schema-keys.ts'

/** What a cell of the workbook holds for the facility file. */
type FieldKind = 'words' | 'day' | 'quantity' | 'number' | 'yes-no' | 'several' | 'several-days'

/** An entry of the facility file that has a cell of its own. */
export type Field = {
  /** From the top of the file; lists without a number. */
  readonly path: readonly string[]
  /** Its name within the subject: the path below its list, or the whole one. */
  readonly key: string
  readonly kind: FieldKind
  readonly about: EntryAbout
  /** The words that may stand there; empty where any may. */
  readonly choices: readonly string[]
  readonly range: readonly [low: string, high: string] | undefined
}

type Def = { readonly innerType?: unknown; readonly format?: unknown }

/** Whether a schema is a day; what makes it optional is looked through. */
function isDaySchema(schema: unknown): boolean {
  const def = (schema as { _zod?: { def?: Def } } | undefined)?._zod?.def
  return def?.innerType === undefined ? def?.format === 'date' : isDaySchema(def.innerType)
}

function kindOf(schema: unknown, path: readonly string[]): FieldKind {
  const type = typeOf(schema)
  if (type === 'array') return isDaySchema(elementOf(schema)) ? 'several-days' : 'several'
  if (type === 'boolean') return 'yes-no'
  if (type === 'number') return 'number'
  if (factAt(path) && type === 'unknown') return 'quantity'
  // A union of a text and a number, or of numbers, is a value that may be a bare one.
  if (type === 'union') return path[0] === 'measurements' ? 'quantity' : 'number'
  return isDaySchema(schema) ? 'day' : 'words'
}

type Options = {
  readonly innerType?: unknown
  readonly options?: readonly { readonly _zod?: { readonly def?: { readonly values?: unknown } } }[]
}

/** The numbers of which one may stand there, where only some may. */
function literalsOf(schema: unknown): readonly string[] | undefined {
  const def = (schema as { _zod?: { def?: Options } } | undefined)?._zod?.def
  if (def?.innerType !== undefined) return literalsOf(def.innerType)
  const values = def?.options?.map((option) => option._zod?.def?.values)
  return values?.every(Array.isArray) ? values.flat().map(String) : undefined
}

const isListOfGroups = (schema: unknown): boolean =>
  typeOf(schema) === 'array' && typeOf(elementOf(schema)) === 'object'

/** An example as it is typed into a cell: without the quotes and brackets of the file. */
const typed = (example: string): string =>
  example
    .replace(/^\[(.*)\]$/, (_, all: string) => all.replaceAll(', ', '; '))
    .replace(/^"(.*)"$/, '$1')
    .replace(/^true$/, 'yes')

/** What passes each sieve has a column for each sieve. */
const sieveFields = (
  path: readonly string[],
  keyed: (path: readonly string[]) => string,
): Field[] =>
  sieveNames.map((name) => ({
    path: [...path, name],
    key: keyed([...path, name]),
    kind: 'quantity',
    about: { label: name, howTo: undefined, example: '38 %' },
    choices: [],
    range: undefined,
  }))

/**
 * Every entry below a path that holds one value, in the order of the schema; lists of groups have
 * sheets of their own.
 * @param from Steps of the path that do not belong to the key.
 */
export function fieldsBelow(
  schema: unknown,
  path: readonly string[],
  from: number,
  system: UnitSystem,
): readonly Field[] {
  const keyed = (whole: readonly string[]): string => whole.slice(from).join('.')
  if (typeOf(schema) === 'object')
    return Object.entries(shapeOf(schema)).flatMap(([key, own]) =>
      isListOfGroups(own) ? [] : fieldsBelow(own, [...path, key], from, system),
    )
  if (typeOf(schema) === 'record') return sieveFields(path, keyed)
  const about = entryAbout(path, system)
  if (!about) return []
  return [
    {
      path,
      key: keyed(path),
      kind: kindOf(schema, path),
      about: { ...about, example: about.example === undefined ? undefined : typed(about.example) },
      choices:
        literalsOf(schema) ?? choicesOf(typeOf(schema) === 'array' ? elementOf(schema) : schema),
      range: factAt(path)?.range,
    },
  ]
}
