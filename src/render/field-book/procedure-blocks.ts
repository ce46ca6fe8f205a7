import type { FieldBookPart, ProcedureShown } from '../../model/manual/field-book.ts'
import type { ManualStep, SheetGroup } from '../../model/manual/procedure.ts'
import { html } from '../text/html.ts'
import { cautionView } from '../views/caution-view.ts'
import { citeBeside, createDrawingPrinter, type DrawingCiter } from '../views/drawing-places.ts'
import { type Block, block } from './block.ts'
import { cautionsBlock, figuresBlock, type Setter } from './setter.ts'

type ProcedurePart = Extract<FieldBookPart, { kind: 'procedure' }>

/** Steps of a way; what is warned of elsewhere in the book or on this page is not said again. */
function stepsBlock(
  group: SheetGroup,
  said: Set<string>,
  { pen }: Setter,
  cite: DrawingCiter,
): Block {
  const minds = (step: ManualStep) => {
    const cautions = step.cautions.filter((c) => !said.has(c.id))
    for (const c of cautions) said.add(c.id)
    return cautions.map((c) => {
      const { signal, word, avoid } = cautionView(c, pen)
      return { signal, word, avoid }
    })
  }
  const list = group.steps.map((step) => ({
    number: step.number,
    do: html([pen.line(step.do), cite(step.drawing)].join(' ').trim()),
    note: pen.line(step.note ?? ''),
    hasNote: step.note !== undefined,
    minds: minds(step),
  }))
  return block({
    letter: group.letter,
    heading: group.title === undefined ? undefined : pen.line(group.title),
    steps: { start: group.steps[0]?.number ?? 1, list },
  })
}

const groupsOf = ({ procedure, methods }: ProcedurePart): readonly SheetGroup[] =>
  procedure.sheet.groups.filter((g) => g.method === undefined || methods.includes(g.method))

/** What was found; a letter only where its way stands on this page. */
function lookBlock(part: ProcedurePart, { pen, placeOf }: Setter): readonly Block[] {
  const { procedure } = part
  const letters = new Set(part.show.includes('steps') ? groupsOf(part).map((g) => g.letter) : [])
  const rows = procedure.sheet.look.map((b) => {
    const here = b.letter !== undefined && letters.has(b.letter)
    const way = procedure.sheet.groups.find((g) => g.letter === b.letter)?.method
    // A way that is not shown here stands elsewhere under the procedure itself.
    const other = b.procedure ?? (b.letter === undefined ? '' : procedure.id)
    return {
      found: pen.line(b.found),
      do: pen.line(b.do),
      letter: here ? (b.letter ?? '') : '',
      at: here || other === '' ? html('') : placeOf(other, b.procedure ? undefined : way),
    }
  })
  return rows.length === 0 ? [] : [block({ look: rows })]
}

const drawingBlock = ({ procedure }: ProcedurePart, { drawings }: Setter): Block[] => {
  const drawing = createDrawingPrinter(drawings, 'column')(procedure.sheet.drawing)
  return drawing.toString() === '' ? [] : [block({ drawing })]
}

type Maker = (part: ProcedurePart, setter: Setter, said: Set<string>) => readonly Block[]

/** How each of the things that can be shown of a procedure becomes blocks. */
const makers: Readonly<Record<ProcedureShown, Maker>> = {
  when: ({ procedure }, { pen }) => [
    block({ line: { label: pen.words.sheet.when, text: pen.line(procedure.sheet.when) } }),
  ],
  figures: ({ procedure }, { pen }) =>
    procedure.sheet.figures.length === 0 ? [] : [figuresBlock(procedure.sheet.figures, pen)],
  measure: ({ procedure }, { pen }) => [
    block({
      list: {
        label: pen.words.procedure.measureFirst,
        items: procedure.measure.map((m) => pen.line(m.how ? `${m.do} ${m.how}` : m.do)),
      },
    }),
  ],
  look: lookBlock,
  cautions: ({ procedure }, { pen, common }, said) => {
    const own = procedure.cautions.filter((c) => !common.has(c.id))
    for (const c of own) said.add(c.id)
    return [
      ...(own.length < procedure.cautions.length ? [block({ before: true })] : []),
      ...(own.length === 0 ? [] : [cautionsBlock(own, procedure.before, pen)]),
    ]
  },
  drawing: drawingBlock,
  steps: (part, setter, said) => {
    const shown = part.show.includes('drawing') ? part.procedure.sheet.drawing : undefined
    const cite = citeBeside(setter.drawings, shown)
    return groupsOf(part).map((group) => stepsBlock(group, said, setter, cite))
  },
  done: ({ procedure }, { pen }) => [
    block({
      inline: { label: pen.words.sheet.doneRight, items: procedure.sheet.done.map(pen.line) },
    }),
  ],
  failures: ({ procedure }, { pen }) => [
    block({
      failures: procedure.failures.map((f) => ({
        see: pen.line(f.see),
        do: pen.line(f.do),
      })),
    }),
  ],
  stop: ({ procedure }, { pen }) => [
    block({
      stop: { label: pen.words.sheet.stopAndCall, items: procedure.sheet.stop.map(pen.line) },
    }),
  ],
}

/** A procedure in its short form, under its name where the page has another. */
export function procedureBlocks(part: ProcedurePart, setter: Setter): readonly Block[] {
  const said = new Set(setter.common)
  const blocks = part.show.flatMap((show) => makers[show](part, setter, said))
  const [first, ...others] = blocks
  const { title } = part.procedure
  if (!first || !setter.named || title === setter.title) return blocks
  // A heading of its own stands before that of a way.
  const heading = setter.pen.line(title)
  return first.heading === undefined
    ? [{ ...first, heading }, ...others]
    : [block({ heading }), ...blocks]
}
