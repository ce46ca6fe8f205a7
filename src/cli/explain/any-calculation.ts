import type { Calculation } from '../../compute/calculation.ts'
import type { Computed } from '../../compute/compute-facility.ts'
import { createEngine } from '../../compute/engine/engine.ts'
import { calculationsOf, declaredWorksheets } from '../../compute/uses/declared-worksheets.ts'
import { ofReadings } from '../../compute/uses/readings.ts'
import { fixed, type Use } from '../../compute/uses/use.ts'
import type { Worksheet } from '../../model/figure.ts'
import { kindWords } from '../../model/quantity/kind-words.ts'
import { counted, type WorksheetWords } from '../../model/worksheet-words.ts'
import { type Given, readInputs, type TypedInput } from './given-inputs.ts'

/** All calculations whose inputs can be typed, by id, also those of no facility. */
export const anyCalculations: ReadonlyMap<string, Calculation> = new Map(
  [...calculationsOf(declaredWorksheets)].filter(([id]) => !ofReadings.has(id)),
)

/** The list of them, one line each. */
export const anyListText = (words: WorksheetWords): string =>
  [
    'Calculations for inputs of your own: explain --all <name> <input=…> …',
    ...[...anyCalculations.values()].map(
      ({ id, inputs }) =>
        `${id.padEnd(28)} ${words.calculations[id]?.title ?? ''}: ${Object.keys(inputs).join(', ')}`,
    ),
  ].join('\n')

const typedInputs = ({ id, inputs }: Calculation, words: WorksheetWords): readonly TypedInput[] =>
  Object.entries(inputs).map(([name, { kind }]) => ({
    name,
    kind,
    label: counted(words.calculations[id]?.inputs?.[name] ?? name),
  }))

/** A worksheet of no manual, so without a number. */
function workAny(calculation: Calculation, values: Given, computed: Computed): Worksheet {
  const { locale, words } = computed
  const bindings = Object.fromEntries([...values].map(([name, si]) => [name, fixed(si, 'given')]))
  const use: Use<string> = { id: calculation.id, calculation, bindings }
  const engine = createEngine<string, string, string>([use], new Map(), locale, words.worksheets)
  const sheet = engine.worksheet(use.id)
  if (!sheet) throw new RangeError(`${use.id} was not worked`)
  return { ...sheet, number: '' }
}

/** A calculation with every input typed, or all that is wrong or missing. */
export function workTyped(
  calculation: Calculation,
  texts: readonly string[],
  computed: Computed,
): Worksheet | readonly string[] {
  const inputs = typedInputs(calculation, computed.words.worksheets)
  const { values, faults } = readInputs(texts, calculation.id, inputs)
  const given = new Set(texts.map((text) => text.split('=')[0]))
  const missing = inputs.filter(({ name }) => !given.has(name))
  const lines = [
    ...faults,
    ...(missing.length > 0 ? [`"${calculation.id}" also needs:`] : []),
    ...missing.map(({ name, kind, label }) => `  ${name}="${kindWords(kind).example}"  ${label}`),
  ]
  return lines.length > 0 ? lines : workAny(calculation, values, computed)
}
