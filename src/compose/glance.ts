import { gearFields, gearSpec } from '../model/fact-spec.ts'
import type { Fact } from '../model/figure.ts'
import type { Contact, GlanceRow, Machine, RaceDay } from '../model/manual.ts'
import { formatExact } from '../model/quantity/format-exact.ts'
import type { Locale } from '../model/quantity/format-quantity.ts'
import type { Quantity } from '../model/quantity/parse-quantity.ts'
import type { Facility } from '../validate/check-facility.ts'

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
export function composeGlance(
  facts: ReadonlyMap<string, Fact>,
  titles: Readonly<Record<string, string>>,
): { title: string; rows: GlanceRow[] }[] {
  const groups = new Map<string, GlanceRow[]>()
  for (const fact of facts.values()) {
    const group = fact.path.split('.')[0] ?? ''
    const title = titles[group]
    if (title === undefined) continue
    groups.set(title, [...(groups.get(title) ?? []), row(fact)])
  }
  return [...groups].map(([title, rows]) => ({ title, rows }))
}

export function composeMachines({ file, tree }: Facility, locale: Locale): Machine[] {
  return (file.equipment ?? []).map((machine, index) => ({
    id: machine.id,
    name: machine.name,
    can: machine.can,
    from: machine.owner === undefined ? machine.from : `${machine.from}: ${machine.owner}`,
    facts: gearFields.flatMap((field): GlanceRow[] => {
      const value = (machine as Readonly<Record<string, unknown>>)[field] as Quantity | undefined
      const spec = gearSpec(field)
      if (!value || !spec) return []
      return [
        {
          label: spec.label,
          text: formatExact(value.si, spec.kind, locale),
          provenance: { kind: 'stated', at: tree.placeOf(['equipment', index, field]) },
          howTo: spec.howTo,
        },
      ]
    }),
  }))
}

export const composeContacts = (
  { file }: Facility,
  roles: Readonly<Record<string, string>>,
): Contact[] =>
  (file.contacts ?? []).map((c) => ({
    role: c.role,
    roleTitle: roles[c.role] ?? c.role,
    name: c.name,
    phone: c.phone,
    note: c.note ?? '',
  }))

export const composeRaceDays = ({ file }: Facility, locale: Locale): RaceDay[] =>
  (file['race-days'] ?? []).map((d) => ({
    date: d.date,
    firstPost: d['first-post'],
    races: d.races,
    interval:
      d.interval === undefined ? '' : formatExact((d.interval as Quantity).si, 'minutes', locale),
  }))
