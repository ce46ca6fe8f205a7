import type { Computed } from '../../compute/compute-facility.ts'
import { createEngine } from '../../compute/engine/engine.ts'
import { type Binding, fixed, type Use } from '../../compute/uses/use.ts'
import { didYouMean } from '../../model/closest.ts'
import { dayNumber, isDay } from '../../model/day.ts'
import type { FigureInput, Worksheet } from '../../model/figure.ts'
import { kindWords } from '../../model/quantity/kind-words.ts'
import { kindOf } from '../../model/quantity/kinds.ts'
import { parseQuantity } from '../../model/quantity/parse-quantity.ts'
import { dimensionless, sameDims } from '../../model/quantity/units.ts'

/** Values in SI by the names of a worksheet's inputs. */
export type Given = ReadonlyMap<string, number>

/** Kinds of things that come whole. */
const counted: ReadonlySet<string> = new Set(['count', 'whole'])

/** An input that may be typed. */
export type TypedInput = Pick<FigureInput, 'name' | 'kind' | 'label'>

/** The value of an input as it is typed, SI, or what is wrong with it. */
function readValue(text: string, { kind: name, label }: TypedInput): number | string {
  const kind = { ...kindOf(name), ...kindWords(name) }
  const expected = `expected ${kind.means} such as "${kind.example}"`
  if (name === 'date') return isDay(text) ? dayNumber(text) : `no date; ${expected}`
  const parsed = parseQuantity(text, { plain: sameDims(kind.dims, dimensionless) })
  if (!parsed.ok) return `${parsed.fault.message}; ${expected}`
  if (!sameDims(parsed.quantity.dims, kind.dims))
    return `not ${kind.means}; expected such as "${kind.example}"`
  const { si } = parsed.quantity
  return counted.has(name) && !Number.isInteger(si)
    ? `${label} are counted; expected a whole number`
    : si
}

/** `width="9 ft"` as a name and a value, or what is wrong with it. */
function readInput(
  text: string,
  of: string,
  inputs: readonly TypedInput[],
): readonly [string, number] | string {
  const [name = '', ...rest] = text.split('=')
  const input = inputs.find((i) => i.name === name)
  if (!input) {
    const known = inputs.map((i) => i.name)
    const hint = didYouMean(name, known) ?? `it has: ${known.join(', ')}`
    return `${text}: ${of} has no input "${name}"; ${hint}`
  }
  const value = readValue(rest.join('='), input)
  return typeof value === 'string' ? `${text}: ${value}` : [name, value]
}

/**
 * Inputs as they are typed, by their names; all faults at once.
 * @param of The worksheet or calculation that they are for.
 */
export function readInputs(
  texts: readonly string[],
  of: string,
  inputs: readonly TypedInput[],
): { readonly values: Given; readonly faults: readonly string[] } {
  const read = texts.map((text) => readInput(text, of, inputs))
  const names = texts.map((text) => text.split('=')[0])
  const twice = names.filter((name, i) => names.indexOf(name) < i)
  return {
    values: new Map(read.filter((r) => typeof r !== 'string')),
    faults: [
      ...read.filter((r) => typeof r === 'string'),
      ...twice.map((name) => `"${name}" is given twice; keep one`),
    ],
  }
}

/** Works a use again with some of its inputs given; the rest stay as the facility has them. */
export function workAgain(computed: Computed, sheet: Worksheet, values: Given): Worksheet {
  const { engine, locale, words } = computed
  const given = ([name, binding]: [string, Binding]): [string, Binding] => {
    const si = values.get(name)
    return [name, si === undefined ? binding : fixed(si, 'given')]
  }
  const again = (use: Use): Use => ({
    ...use,
    bindings: Object.fromEntries(Object.entries(use.bindings).map(given)),
  })
  const uses = engine.uses.map((use): Use => (use.id === sheet.id ? again(use) : use))
  const worked = createEngine<string, string, string>(uses, engine.facts, locale, words.worksheets)
  return worked.worksheet(sheet.id) ?? sheet
}
