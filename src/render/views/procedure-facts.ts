import type { ManualProcedure } from '../../model/manual/procedure.ts'
import { fill } from '../../model/pattern.ts'
import { type Html, html } from '../text/html.ts'
import type { Pen } from './pen.ts'

/** A pair of words: a short head and what it says. */
export type FactRow = { readonly head: string; readonly lines: readonly Html[] }

function whoLine({ who }: ManualProcedure, pen: Pen): Html {
  const { words } = pen
  const pattern = who.people === 1 ? words.procedure.person : words.procedure.people
  const count = fill(pattern, { count: who.people })
  return html(`${count}. ${pen.line(who.roles)}`)
}

function gearLines({ gear }: ManualProcedure, pen: Pen): Html[] {
  const { words } = pen
  return gear.flatMap(({ can, why, machine, instead }) => {
    const work = words.capabilities[can]
    if (machine !== undefined)
      return [html(`${pen.line(machine)} <span class="soft">(${work}: ${pen.line(why)})</span>`)]
    if (instead === undefined) return []
    const lacking = `<span class="soft">${work}: ${words.procedure.instead}</span>`
    return [html(`${lacking} ${pen.line(instead)}`)]
  })
}

const timeLines = (p: ManualProcedure, pen: Pen): Html[] =>
  p.time.map((t) => {
    const words = t.text === undefined ? '' : pen.line(t.text).toString()
    return html(t.figure === undefined ? words : `${pen.line(`{${t.figure}}`)} ${words}`)
  })

const materialLines = (p: ManualProcedure, pen: Pen): Html[] =>
  p.materials.map(({ name, figure }) =>
    html(
      figure === undefined
        ? pen.line(name).toString()
        : `${pen.line(name)}: ${pen.line(`{${figure}}`)}`,
    ),
  )

/** When, who, how long, and what it takes; rows with nothing to say are left out. */
export function factRows(p: ManualProcedure, pen: Pen): FactRow[] {
  const { words } = pen
  const rows: readonly FactRow[] = [
    { head: words.procedure.when, lines: p.triggers.map(pen.line) },
    { head: words.procedure.who, lines: [whoLine(p, pen)] },
    { head: words.procedure.authority, lines: [pen.line(p.who.authority)] },
    { head: words.procedure.time, lines: timeLines(p, pen) },
    { head: words.procedure.gear, lines: gearLines(p, pen) },
    {
      head: words.procedure.tools,
      lines: p.tools.length === 0 ? [] : [pen.line(p.tools.join(', '))],
    },
    { head: words.procedure.material, lines: materialLines(p, pen) },
  ]
  return rows.filter(({ lines }) => lines.length > 0)
}
