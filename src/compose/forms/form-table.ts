import type { ManualForm } from '../../model/manual/form.ts'
import type { FacilityFile } from '../../validate/schemas/facility.ts'
import type { Form, FormRows } from '../../validate/schemas/forms.ts'
import type { ComposeContext } from '../context.ts'
import { surveyGrid } from './survey-grid.ts'

type FormTable = NonNullable<ManualForm['table']>
type Rows = FormTable['rows']
export type FormMachine = NonNullable<FacilityFile['equipment']>[number]

const ticked = (heads: readonly string[]): Rows => heads.map((head) => ({ head, write: undefined }))

const drainsAndGates = (file: FacilityFile): readonly string[] =>
  (file.oval.marks ?? [])
    .filter((m) => m.kind === 'drain' || m.kind === 'gate' || m.kind === 'water')
    .map((m) => m.name)

const asHead = (name: string): string => `${name.charAt(0).toUpperCase()}${name.slice(1)}`

/** What is looked at on a machine that can do such work. */
function checkRows(form: Form, machine: FormMachine | undefined): Rows {
  const can = new Set<string>(machine?.can)
  return (form.checks ?? [])
    .filter((c) => (c.can?.some((x) => can.has(x)) ?? true) && !c.except?.some((x) => can.has(x)))
    .map((c) => ({ head: c.look, write: c.write ? 'line' : undefined }))
}

/** What stands ready in the first column: the places, races and machines of this facility. */
function readyRows(
  first: FormRows,
  form: Form,
  context: ComposeContext,
  machine: FormMachine | undefined,
): Rows {
  const { file } = context.facility
  switch (first) {
    case 'survey-stations':
      return ticked(surveyGrid(context).stations)
    case 'races': {
      const races = Math.round(context.engine.si('race-days.races') ?? 0)
      return ticked(Array.from({ length: races }, (_, i) => String(i + 1)))
    }
    case 'drains-and-gates':
      return ticked(drainsAndGates(file))
    case 'seen-at-hand-over':
      return ticked([...drainsAndGates(file), ...(file.equipment ?? []).map((m) => asHead(m.name))])
    case 'checks':
      return checkRows(form, machine)
  }
}

/**
 * Names of the lines across, from the rail outward, with their distances where a survey has set
 * them.
 */
function acrossColumns(context: ComposeContext): FormTable['columns'] {
  const { words } = context.library
  const { lines, offsets } = surveyGrid(context)
  const name = (i: number): string => {
    if (i === 0) return words.forms.rail
    if (i === lines - 1) return words.forms.outside
    return lines === 3 ? words.forms.middle : `${words.forms.line} ${i + 1}`
  }
  return Array.from({ length: lines }, (_, i) => ({
    head: offsets[i] === undefined ? name(i) : `${name(i)}, ${offsets[i]}`,
    wide: 1,
    write: 'line',
    keeps: ['depth'],
  }))
}

type WrittenColumn = NonNullable<Form['table']>['columns'][number]

const column = (c: WrittenColumn): FormTable['columns'][number] =>
  typeof c === 'string'
    ? { head: c, wide: 1, write: 'line', keeps: ['words'] }
    : {
        head: c.head,
        wide: c.wide ?? 1,
        write: c.check ? 'check' : 'line',
        keeps: c.keeps ?? ['words'],
      }

/** Blank rows where nothing is said: below what stands ready, and where nothing stands ready. */
const [below, least] = [2, 8]

/** The table of a form; undefined where it has none. */
export function composeTable(
  form: Form,
  context: ComposeContext,
  machine: FormMachine | undefined,
): ManualForm['table'] {
  const { table } = form
  if (!table) return undefined
  const [first, ...others] = table.columns.map(column)
  const rows = table.first === undefined ? [] : readyRows(table.first, form, context, machine)
  return {
    columns: [
      ...(first ? [first] : []),
      ...(table.across ? acrossColumns(context) : []),
      ...others,
    ],
    rows,
    keeps: table.keeps,
    spare: rows.length > 0 ? (table.spare ?? below) : Math.max(table.spare ?? least, 1),
  }
}
