import type { Fact } from '../../model/figure.ts'
import type { GlanceGroup, GlanceRow } from '../../model/manual/facility.ts'
import type { ComposeContext } from '../context.ts'

const row = (fact: Fact): GlanceRow => ({
  label: fact.label,
  text: fact.text,
  provenance: fact.provenance,
  howTo: fact.howTo,
})

/**
 * Facts by the group of the facility file that they stand in; rules of the trade and machines have
 * pages of their own.
 */
export function composeGlance({ engine, library }: ComposeContext): readonly GlanceGroup[] {
  const titles: Readonly<Record<string, string>> = library.words.groups
  const groups = new Map<string, GlanceRow[]>()
  for (const fact of engine.facts.values()) {
    const group = fact.path.split('.')[0] ?? ''
    const title = titles[group]
    if (title === undefined) continue
    groups.set(title, [...(groups.get(title) ?? []), row(fact)])
  }
  return [...groups].map(([title, rows]) => ({ title, rows }))
}
