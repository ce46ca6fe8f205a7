import type { Problem } from '../../../model/problem.ts'
import type { ParsedFacility } from '../parsed-facility.ts'
import { quantitiesOf, written } from './valued.ts'

/** Units that are those of one system only. */
const systems = {
  us: /\b(ft|in|yd|mi|mph|lb|tons?|gal|psi|ft3|hp)\b|°F/,
  metric: /\b(mm|cm|m|km|kg|t|L|kPa|m3|kW)\b|°C/,
} as const

/** What the systems are called. */
const named = { us: 'US', metric: 'metric' } as const

/** Fewer values than this tell nothing of their writer. */
const fewest = 4

/** The manual speaks in the units that the file is written in. */
export function checkUnits(parsed: ParsedFacility): Problem[] {
  const { file, tree } = parsed
  const texts = quantitiesOf(file).map(({ path }) => written(parsed, path))
  const [own, other] =
    file.units === 'us' ? (['us', 'metric'] as const) : (['metric', 'us'] as const)
  const count = (system: keyof typeof systems) =>
    texts.filter((t) => systems[system].test(t)).length
  const [ours, theirs] = [count(own), count(other)]
  if (theirs < fewest || theirs < 4 * ours) return []
  return [
    tree.problem(
      tree.placeOf(['units']),
      'facility/odd',
      `the manual would be in ${named[own]} units; ${theirs} values of this file are in ${named[other]} ones, ${ours} in ${named[own]} ones`,
      {
        hint: `write "units: ${other}", or leave it where readers want the others`,
        severity: 'warning',
      },
    ),
  ]
}
