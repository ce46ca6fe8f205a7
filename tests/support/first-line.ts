import { readYaml } from '../../src/read/read-yaml.ts'
import { checkFacility } from '../../src/validate/check-facility.ts'

/** The line that the first problem of a facility file points at. */
export function firstLine(text: string): number | undefined {
  const { value, problems } = readYaml({ path: 'facility.yaml', text })
  const lines = (value ? checkFacility(value).problems : problems).map((p) => p.place.line)
  return lines.length === 0 ? undefined : Math.min(...lines)
}
