import type { ManualForm } from '../model/manual.ts'
import type { Form, FormRows } from '../validate/schemas/forms.ts'
import { applies } from './applies.ts'
import { type PlanContext, printed, valueOf } from './plans/plan-context.ts'

/** What stands ready in the first column: the places, races and machines of this facility. */
function firstColumn(first: FormRows, { facility, computed }: PlanContext, print: (si: number) => string): readonly string[] {
  const count = (name: string): number => Math.round(valueOf(computed.engine, name) ?? 0)
  switch (first) {
    case 'survey-stations': {
      const stations = count('practice.survey.stations')
      const rail = valueOf(computed.engine, 'rail.length') ?? 0
      return Array.from({ length: stations }, (_, i) => print((i * rail) / stations))
    }
    case 'races':
      return Array.from({ length: count('race-days.races') }, (_, i) => String(i + 1))
    case 'machines':
      return (facility.file.equipment ?? []).map((m) => m.name)
    case 'drains-and-gates':
      return (facility.file.oval.marks ?? []).filter((m) => m.kind === 'drain' || m.kind === 'gate' || m.kind === 'water').map((m) => m.name)
  }
}

/** Rows left free below what stands ready, rows of a table at the least, and rows where nothing stands ready. */
const [below, least, spare] = [3, 12, 8]

/** The forms that this facility has a use for. */
export function composeForms(forms: readonly Form[], context: PlanContext): readonly ManualForm[] {
  const print = (si: number): string => printed(si, 'reach', context)
  return forms.filter((f) => applies(f.when, context.here)).map(({ id, title, about, boxes, table, after, sign }): ManualForm => {
    const ready = table?.first === undefined ? [] : firstColumn(table.first, context, print)
    const blank = (length: number): string[] => Array.from({ length }, () => '')
    const rows = table && (ready.length > 0 ? [...ready, ...blank(Math.max(below, least - ready.length))] : blank(table.rows ?? spare))
    const places = (list: Form['boxes']): ManualForm['boxes'] => list.map((b) => ({ label: b.label, wide: b.wide, tall: b.tall ?? 1 }))
    return { id, title, about, boxes: places(boxes), table: table && rows ? { heads: table.heads, rows } : undefined, after: places(after ?? []), sign }
  })
}
