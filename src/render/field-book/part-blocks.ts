import type { FieldBookPart } from '../../model/manual/field-book.ts'
import type { ManualSymptom } from '../../model/manual/symptom.ts'
import { escapeHtml } from '../text/escape-html.ts'
import { html } from '../text/html.ts'
import { quantityHtml } from '../text/number-html.ts'
import { createDrawingPrinter } from '../views/drawing-places.ts'
import { emergencyView } from '../views/emergency-view.ts'
import type { Pen } from '../views/pen.ts'
import { reckonerView } from '../views/reckoner-view.ts'
import { scheduleView } from '../views/schedules-view.ts'
import { symptomView } from '../views/symptoms-view.ts'
import { type Block, block } from './block.ts'
import { procedureBlocks } from './procedure-blocks.ts'
import { cautionsBlock, figuresBlock, type Setter } from './setter.ts'

type PlanPart = Extract<FieldBookPart, { kind: 'plan' }>

/** The tables of a plan, each with what stands over it; its own words come first. */
function planBlocks({ plan }: PlanPart, { pen, drawings, title, named }: Setter): readonly Block[] {
  const view = scheduleView(plan, pen, createDrawingPrinter(drawings, 'column'))
  return [
    ...view.drawings.filter((d) => d.toString() !== '').map((drawing) => block({ drawing })),
    ...view.tables.map((table, i) => {
      const says = named || view.tables.length > 1
      const heading = says && plan.tables[i]?.title !== title ? table.title : undefined
      return block({ heading, about: table.about, estimate: table.estimate, table })
    }),
  ]
}

function symptomBlock(s: ManualSymptom, { pen, placeOf }: Setter): Block {
  const view = symptomView(s, pen)
  const causes = view.causes.map((c, i) => ({ ...c, at: placeOf(s.causes[i]?.procedure ?? '') }))
  return block({ symptom: { ...view, causes } })
}

/** What somebody reads out stays together; a long list of people may go on on the next page. */
function emergencyBlocks(pen: Pen): readonly Block[] {
  const view = emergencyView(pen, 'paper')
  return [{ call: view }, { who: view }, { kept: view }].map((part) => block({ emergency: part }))
}

/** What to say to dispatch, for a page without room for all of the emergency: what is known here. */
function sayBlock({ manual, words }: Pen): Block {
  const { number, address, gate, meetingPoint } = manual.emergency
  const said = [
    [words.emergency.address, address],
    [words.emergency.gate, gate],
    [words.emergency.meetingPoint, meetingPoint],
  ] as const
  const items = said.flatMap(([label, text]) =>
    text === '' ? [] : [html(escapeHtml(`${label}: ${text}.`))],
  )
  const label = `${words.emergency.call} ${number}`.trim()
  return block({
    inline: { label, items: [html(escapeHtml(`${manual.facility.name}.`)), ...items] },
  })
}

/** A part as blocks, each of which stays whole as long as a page has room for it. */
export function partBlocks(part: FieldBookPart, setter: Setter): readonly Block[] {
  const { pen, drawings } = setter
  switch (part.kind) {
    case 'emergency':
      return emergencyBlocks(pen)
    case 'say':
      return [sayBlock(pen)]
    case 'procedure':
      return procedureBlocks(part, setter)
    case 'plan':
      return planBlocks(part, setter)
    case 'reckoner':
      return [block({ reckoner: reckonerView(part.reckoner, pen) })]
    case 'figures':
      return [figuresBlock(part.figures, pen)]
    case 'chapter':
      return [block({ prose: pen.block(part.chapter.text) })]
    case 'drawing': {
      const drawing = createDrawingPrinter(drawings, 'column')(part.drawing)
      return drawing.toString() === '' ? [] : [block({ drawing })]
    }
    case 'cautions':
      return [cautionsBlock(part.cautions, 'machine', pen)]
    case 'symptoms':
      return part.symptoms.map((s) => symptomBlock(s, setter))
    case 'terms':
      return [
        block({
          terms: part.terms.map((t) => ({ term: t.term, means: pen.line(t.means) })),
        }),
      ]
    case 'findings':
      return [
        block({
          findings: part.findings.map((f) => ({
            title: pen.line(f.title),
            do: pen.line(f.do),
            numbers: html(
              f.figures
                .flatMap((name) => pen.manual.quantities[name]?.text ?? [])
                .slice(0, 1)
                .map(quantityHtml)
                .join(''),
            ),
          })),
        }),
      ]
  }
}
