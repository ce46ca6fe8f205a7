import type { Fact } from '../../model/figure.ts'
import type { GlanceGroup, GlanceRow } from '../../model/manual/facility.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import type { ComposeContext } from '../context.ts'

/**
 * Nobody reckons with these: the mean of many readings has as many digits as text has, what somebody
 * has stated all of them.
 */
const row = (fact: Fact, { locale }: ComposeContext): GlanceRow => ({
  label: fact.label,
  text:
    fact.provenance.kind === 'measured'
      ? formatExact(fact.si, fact.kind, locale, 'prose')
      : fact.text,
  provenance: fact.provenance,
  howTo: fact.howTo,
})

/**
 * Facts by the group of the facility file that they stand in; rules of the trade and machines have
 * pages of their own.
 */
export function composeGlance(context: ComposeContext): readonly GlanceGroup[] {
  const { engine, library } = context
  const titles: Readonly<Record<string, string>> = library.words.groups
  const groups = new Map<string, GlanceRow[]>()
  for (const fact of engine.facts.values()) {
    const group = fact.path.split('.')[0] ?? ''
    const title = titles[group]
    if (title === undefined) continue
    groups.set(title, [...(groups.get(title) ?? []), row(fact, context)])
  }
  return [...groups].map(([title, rows]) => ({ title, rows }))
}
