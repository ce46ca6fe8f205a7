import type { TableRows } from '../../model/manual/schedule.ts'
import type { ComposeContext } from '../context.ts'

/** The symptom finder on one page: what is said, the first check, where to go. */
export function symptomChartRows({ parts }: ComposeContext): TableRows {
  const titles = new Map(parts.procedures.map((p) => [p.id, p.title]))
  return parts.symptoms.map((s) => {
    const links = s.causes.map(
      (c) => `[${titles.get(c.procedure) ?? ''}](procedure:${c.procedure})`,
    )
    return [s.says, s.causes[0]?.check ?? '', [...new Set(links)].join('; ')]
  })
}
