import type { FindingsInput } from '../compute/findings/conditions.ts'
import { type FindingRule, findingRules } from '../compute/findings/rules.ts'
import { dayNumber } from '../model/day.ts'
import type { Finding } from '../model/manual/finding.ts'
import type { FindingText } from '../validate/schemas/library.ts'
import { type ComposeContext, itemsOf } from './context.ts'

const rank = { serious: 0, plan: 1, note: 2 } as const

const inputOf = ({ engine, facility, here, date }: ComposeContext): FindingsInput => ({
  engine,
  capabilities: here.capabilities,
  contactRoles: new Set((facility.file.contacts ?? []).map((c) => c.role)),
  emergency: new Set(Object.keys(facility.file.emergency ?? {})),
  today: dayNumber(date),
})

/** Lines of the facility file that say what a rule looked at, such as `facility.yaml:31`. */
const placesOf = ({ facts = [] }: FindingRule, { engine }: ComposeContext): readonly string[] => [
  ...new Set(
    facts.flatMap((path) => {
      const provenance = engine.facts.get(path)?.provenance
      return provenance && 'at' in provenance ? [`${provenance.at.file}:${provenance.at.line}`] : []
    }),
  ),
]

/**
 * The findings that hold here, worst first, with the lines of the facility file that they come
 * from.
 */
export function composeFindings(context: ComposeContext): readonly Finding[] {
  const { engine, library } = context
  const input = inputOf(context)
  const texts = new Map(itemsOf(library.findings).map((t) => [t.id, t]))
  const wordsOf = ({ id }: FindingRule): FindingText => {
    const text = texts.get(id)
    if (!text) throw new RangeError(`a checked library has no words for ${id}`)
    return text
  }
  return findingRules
    .filter((rule) => rule.holds(input))
    .map((rule) => ({
      ...wordsOf(rule),
      figures: (rule.figures ?? []).filter((f) => engine.figure(f)?.value.ok),
      where: placesOf(rule, context),
    }))
    .sort((a, b) => rank[a.severity] - rank[b.severity])
}
