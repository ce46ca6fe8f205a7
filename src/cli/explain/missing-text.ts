import type { Computed } from '../../compute/compute-facility.ts'
import { missingFor } from '../../compute/uses/missing-for.ts'
import type { Readings } from '../../compute/uses/readings.ts'
import { capabilityOf, factSpec } from '../../model/fact-spec.ts'

/** Where readings stand in the facility file. */
const keyOfReadings: Readonly<Record<keyof Readings, string>> = {
  depths: 'a survey of depths (surveys: of: cushion-depth)',
  levels: 'a survey of levels (surveys: of: surface-level)',
  weather: 'a record of daily weather (weather: file)',
  sieve: 'a sieve analysis of the cushion (cushion: sieve)',
  densities: 'density tests of the base (base: density)',
}

/** Facts that are read from entries of another name. */
const keyOfFact: Readonly<Record<string, string>> = {
  'fair.day': 'race-days: date',
  'fair.zone': 'place: time-zone',
}

/** `place.latitude` as it is nested in the file: `place: latitude`. */
function keyOf(path: string): string {
  const known = keyOfFact[path]
  if (known !== undefined) return known
  if (path.startsWith('rail-line.')) return 'oval: rail-line'
  if (path.startsWith('climate.'))
    return `climate: ${path.slice('climate.'.length)}, in the month of the first race day`
  return path.replaceAll('.', ': ')
}

/** One line for each machine or fact that is missing. */
function factLines(paths: readonly string[], computed: Computed): string[] {
  const lacking = new Map<string, string[]>()
  const lines = paths.flatMap((path) => {
    const capability = capabilityOf(path)
    const label = factSpec(path)?.label ?? path
    if (!capability) return [`${label} (${keyOf(path)})`]
    const field = path.slice(`gear.${capability}.`.length)
    if (computed.capabilities.has(capability))
      return [`${label} of the machine for "${capability}" (equipment: ${field})`]
    lacking.set(capability, [...(lacking.get(capability) ?? []), field])
    return []
  })
  const machines = [...lacking].map(
    ([capability, fields]) =>
      `a machine that can "${capability}" (equipment: can: [${capability}], with ${fields.join(', ')})`,
  )
  return [...machines, ...lines]
}

/** What a facility lacks for a worksheet, with the keys of its file that would supply it. */
export function missingText(use: string, computed: Computed): string {
  const { known, data, locale } = computed
  const missing = missingFor(use, { known, data, system: locale.system })
  const lines = missing
    ? [
        ...factLines(missing.facts, computed),
        ...missing.readings.map((name) => keyOfReadings[name]),
      ]
    : []
  return lines.length === 0
    ? 'this facility does not have it'
    : ['this facility lacks for it:', ...lines.map((line) => `  ${line}`)].join('\n')
}
