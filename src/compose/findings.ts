import { type FindingsInput, findingRules } from '../compute/findings/rules.ts'
import type { Finding } from '../model/manual.ts'
import type { FindingText } from '../validate/schemas/library.ts'

const rank = { serious: 0, plan: 1, note: 2 } as const

/**
 * The findings that hold here, worst first, with the lines of the facility file that they come
 * from.
 */
export function composeFindings(
  input: FindingsInput,
  texts: readonly FindingText[],
): readonly Finding[] {
  const byId = new Map(texts.map((t) => [t.id, t]))
  const found = findingRules.flatMap((rule): Finding[] => {
    const text = byId.get(rule.id)
    if (!text || !rule.holds(input)) return []
    const where = rule.facts.flatMap((path) => {
      const provenance = input.engine.facts.get(path)?.provenance
      return provenance && 'at' in provenance ? [`${provenance.at.file}:${provenance.at.line}`] : []
    })
    return [
      {
        id: rule.id,
        severity: text.severity,
        title: text.title,
        text: text.text,
        do: text.do,
        figures: rule.figures.filter((f) => input.engine.figure(f)?.value.ok),
        where: [...new Set(where)],
      },
    ]
  })
  return found.sort((a, b) => rank[a.severity] - rank[b.severity])
}
