import { type FindingsInput, findingRules } from '../compute/findings/rules.ts'
import { dayNumber } from '../model/day.ts'
import type { Finding } from '../model/manual/finding.ts'
import { type ComposeContext, itemsOf } from './context.ts'

const rank = { serious: 0, plan: 1, note: 2 } as const

const inputOf = ({ engine, facility, here, date }: ComposeContext): FindingsInput => ({
  engine,
  capabilities: here.capabilities,
  contactRoles: new Set((facility.file.contacts ?? []).map((c) => c.role)),
  emergency: new Set(Object.keys(facility.file.emergency ?? {})),
  hasClimate: engine.facts.has('climate.tmax'),
  today: dayNumber(date),
})

/**
 * The findings that hold here, worst first, with the lines of the facility file that they come
 * from.
 */
export function composeFindings(context: ComposeContext): readonly Finding[] {
  const { engine, library } = context
  const input = inputOf(context)
  const texts = new Map(itemsOf(library.findings).map((t) => [t.id, t]))
  const found = findingRules.flatMap((rule): Finding[] => {
    const text = texts.get(rule.id)
    if (!text || !rule.holds(input)) return []
    const where = rule.facts.flatMap((path) => {
      const provenance = engine.facts.get(path)?.provenance
      return provenance && 'at' in provenance ? [`${provenance.at.file}:${provenance.at.line}`] : []
    })
    return [
      {
        id: rule.id,
        severity: text.severity,
        title: text.title,
        text: text.text,
        do: text.do,
        figures: rule.figures.filter((f) => engine.figure(f)?.value.ok),
        where: [...new Set(where)],
      },
    ]
  })
  return found.sort((a, b) => rank[a.severity] - rank[b.severity])
}
