import { capabilityOf, factSpec, gearFields, gearSpec } from '../../../model/fact-spec.ts'
import type { Problem } from '../../../model/problem.ts'
import { parseQuantity } from '../../../model/quantity/parse-quantity.ts'
import { type UsualRange, usualOfFact, usualOfMachine } from '../../../model/usual-range.ts'
import type { Path } from '../../../read/read-yaml.ts'
import { readMeasured } from '../../read-measured.ts'
import type { ParsedFacility } from '../parsed-facility.ts'
import { quantitiesOf, statedAt, written } from './valued.ts'

/** Where a dollar or its like buys about the same; elsewhere prices are not compared. */
const alike = ['USD', 'CAD', 'AUD', 'NZD', 'EUR', 'GBP', 'CHF']

const si = (text: string): number => {
  const parsed = parseQuantity(text, { plain: true })
  if (!parsed.ok) throw new RangeError(`reference data: ${text}: ${parsed.fault.message}`)
  return parsed.quantity.si
}

/** A value that is held against what is usual. */
type Asked = { readonly path: Path; readonly si: number; readonly label: string }

/** Beyond all of some ranges by more than rounding between units. */
function unusual(value: number, ranges: readonly UsualRange[]): UsualRange | undefined {
  const lows = ranges.toSorted((a, b) => si(a[0]) - si(b[0]))
  const highs = ranges.toSorted((a, b) => si(b[1]) - si(a[1]))
  const [low, high] = [lows[0]?.[0], highs[0]?.[1]]
  if (low === undefined || high === undefined) return undefined
  return value < si(low) * 0.99 || value > si(high) * 1.01 ? [low, high] : undefined
}

function ask(
  parsed: ParsedFacility,
  { path, si: value, label }: Asked,
  ranges: readonly UsualRange[],
): Problem[] {
  const range = unusual(value, ranges)
  const { currency = 'USD' } = parsed.file
  if (!range || (range[0].startsWith('$') && !alike.includes(currency))) return []
  return [
    parsed.tree.problem(
      parsed.tree.placeOf(path),
      'facility/odd',
      `${written(parsed, path)} is unusual for ${label}: ${range[0]} to ${range[1]} are common`,
      {
        hint: 'are unit and decimal point right? where it is so, leave it: it is used as it stands',
        severity: 'warning',
      },
    ),
  ]
}

/** The fact that an entry states: lists have one for all their items. */
const factAtPath = (path: Path): string =>
  path
    .filter((step) => typeof step === 'string')
    .join('.')
    .replace(/^base\.density\./, 'density.')

function statedFacts(parsed: ParsedFacility): Problem[] {
  return quantitiesOf(parsed.file).flatMap(({ path, si: value }) => {
    const fact = factAtPath(path)
    const [range, spec] = [usualOfFact(fact), factSpec(fact)]
    return range && spec ? ask(parsed, { path, si: value, label: spec.label }, [range]) : []
  })
}

const races = (parsed: ParsedFacility): Problem[] =>
  (parsed.file['race-days'] ?? []).flatMap(({ races: value }, i) => {
    const range = usualOfFact('race-days.races')
    const path = ['race-days', i, 'races']
    return range ? ask(parsed, { path, si: value, label: 'races of one day' }, [range]) : []
  })

const measured = (parsed: ParsedFacility): Problem[] =>
  (parsed.file.measurements ?? []).flatMap(({ of, value }, i) => {
    const spec = factSpec(of)
    const read = spec && readMeasured(of, value)
    if (!spec || !read || 'params' in read) return []
    const path = ['measurements', i, 'value']
    const work = capabilityOf(of)
    const range = usualOfFact(of)
    const ranges = work ? usualOfMachine(of.split('.')[2] ?? '', [work]) : range ? [range] : []
    return ask(parsed, { path, si: read.si, label: spec.label }, ranges)
  })

const machines = (parsed: ParsedFacility): Problem[] =>
  (parsed.file.equipment ?? []).flatMap(({ can }, i) =>
    gearFields.flatMap((field) => {
      const path = ['equipment', i, field]
      const value = statedAt(parsed, path)
      const label = gearSpec(field)?.label
      if (!value || label === undefined) return []
      return ask(parsed, { path, si: value.si, label }, usualOfMachine(field, can))
    }),
  )

/** Values that can be true, and are so seldom that a slip is likelier: asked about, not changed. */
export const checkUsual = (parsed: ParsedFacility): Problem[] => [
  ...statedFacts(parsed),
  ...races(parsed),
  ...measured(parsed),
  ...machines(parsed),
]
