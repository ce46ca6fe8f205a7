import { formatExact } from '../../model/quantity/format-exact.ts'
import type { Locale } from '../../model/quantity/format-quantity.ts'
import { counted, type Said, type WorksheetWords } from '../../model/worksheet-words.ts'
import type { Calculation, Told } from '../calculation.ts'
import type { Use } from '../uses/use.ts'

/**
 * The words of worksheets for one system of units. A word that is missing is empty here; the check
 * of the library reports it with its place, and no manual is made.
 */
export type Wording = {
  readonly number: (use: Use<string>) => string
  readonly title: (use: Use<string>) => string
  readonly about: (calculation: Calculation) => string
  /** What an input is, as it stands with its printed number; as with many where none is given. */
  readonly input: (calculation: Calculation, name: string, number?: string) => string
  readonly output: (calculation: Calculation, name: string, number?: string) => string
  /** Why a calculation gives no number, from the id of its refusal. */
  readonly refusal: (calculation: Calculation, id: string) => string
  /** Why a number is fixed, from its id. */
  readonly reason: (id: string) => string
  /** A word inside a formula. */
  readonly term: (calculation: Calculation, id: string) => string | undefined
  readonly unknown: (input: string) => string
  /** Bounds are printed quantities; undefined where there is none. */
  readonly outside: (
    input: string,
    value: string,
    low: string | undefined,
    high: string | undefined,
  ) => string
}

const put = (text: string, values: Readonly<Record<string, string>>): string =>
  text.replace(/\{([a-z]+)\}/g, (all, name: string) => values[name] ?? all)

const toldIn = (told: Told | undefined, locale: Locale): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(told ?? {}).map(([name, value]) => [
      name,
      typeof value === 'string' ? value : formatExact(value.si, value.kind, locale),
    ]),
  )

/** The words that an engine speaks with. */
export function createWording(words: WorksheetWords, locale: Locale): Wording {
  const here = (said: Said | undefined): string | undefined =>
    typeof said === 'object' ? said[locale.system] : said
  const of = ({ id }: Calculation) => words.calculations[id]
  const told = (calculation: Calculation, text: string | undefined): string =>
    put(text ?? '', toldIn(calculation.told, locale))
  return {
    number: ({ id }) => `W-${words.worksheets[id]?.number ?? ''}`,
    title: ({ id, calculation }) =>
      here(words.worksheets[id]?.title) ?? of(calculation)?.title ?? '',
    about: (calculation) => told(calculation, of(calculation)?.about),
    input: (calculation, name, number) => counted(of(calculation)?.inputs?.[name] ?? '', number),
    output: (calculation, name, number) => counted(of(calculation)?.outputs[name] ?? '', number),
    refusal: (calculation, id) => told(calculation, of(calculation)?.refusals?.[id]),
    reason: (id) => here(words.reasons[id]) ?? '',
    term: (calculation, id) => of(calculation)?.terms?.[id],
    unknown: (input) => put(words.noNumber.unknown, { input }),
    outside: (input, value, low, high) =>
      put(words.noNumber.outside, {
        input,
        value,
        low: low ?? words.noNumber.any,
        high: high ?? words.noNumber.any,
      }),
  }
}
