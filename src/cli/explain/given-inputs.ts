import type { Computed } from '../../compute/compute-facility.ts'
import { createEngine } from '../../compute/engine/engine.ts'
import { type Binding, fixed, type Use } from '../../compute/uses/use.ts'
import { didYouMean } from '../../model/closest.ts'
import type { Worksheet } from '../../model/figure.ts'
import { kindOf } from '../../model/quantity/kinds.ts'
import { parseQuantity } from '../../model/quantity/parse-quantity.ts'
import { dimensionless, sameDims } from '../../model/quantity/units.ts'

/** Values in SI by the names of a worksheet's inputs. */
type Given = ReadonlyMap<string, number>

/** Kinds of things that come whole. */
const counted: ReadonlySet<string> = new Set(['count', 'whole'])

/** `width="9 ft"` as a name and a value, or what is wrong with it. */
function readInput(text: string, sheet: Worksheet): readonly [string, number] | string {
  const [name = '', ...rest] = text.split('=')
  const input = sheet.inputs.find((i) => i.name === name)
  if (!input) {
    const known = sheet.inputs.map((i) => i.name)
    const hint = didYouMean(name, known) ?? `it has: ${known.join(', ')}`
    return `${text}: ${sheet.id} has no input "${name}"; ${hint}`
  }
  const kind = kindOf(input.kind)
  const parsed = parseQuantity(rest.join('='), { plain: sameDims(kind.dims, dimensionless) })
  if (!parsed.ok)
    return `${text}: ${parsed.fault.message}; expected ${kind.means} such as "${kind.example}"`
  if (!sameDims(parsed.quantity.dims, kind.dims))
    return `${text}: not ${kind.means}; expected such as "${kind.example}"`
  const { si } = parsed.quantity
  if (counted.has(input.kind) && !Number.isInteger(si))
    return `${text}: ${input.label} are counted; expected a whole number`
  return [name, si]
}

/** Inputs as they are typed, by the names of the worksheet's inputs; all faults at once. */
export function readInputs(
  texts: readonly string[],
  sheet: Worksheet,
): { readonly values: Given; readonly faults: readonly string[] } {
  const read = texts.map((text) => readInput(text, sheet))
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
