import { latestDay } from '../compute/survey/latest-day.ts'
import type { FormBox, ManualForm } from '../model/manual.ts'
import { formatExact } from '../model/quantity/format-exact.ts'
import { byStation } from '../model/survey.ts'
import type { FacilityFile } from '../validate/schemas/facility.ts'
import type { Form, FormRows } from '../validate/schemas/forms.ts'
import { applies } from './applies.ts'
import { numberOf, type PlanContext, printed } from './plans/plan-context.ts'

type FormTable = NonNullable<ManualForm['table']>
type Rows = FormTable['rows']
type Machine = NonNullable<FacilityFile['equipment']>[number]

const ticked = (heads: readonly string[]): Rows => heads.map((head) => ({ head, write: undefined }))

/**
 * Where a depth survey is read: as last time, so that surveys can be compared; without one, evenly
 * around the rail.
 */
function surveyGrid(context: PlanContext): {
  readonly stations: readonly string[]
  readonly offsets: readonly string[]
  readonly lines: number
} {
  const { facility, computed } = context
  const count = (name: string): number => Math.round(numberOf(computed.engine, name) ?? 0)
  const last = byStation(latestDay(facility.surveys, 'cushion-depth')?.readings ?? [])
  const exact = (si: number): string => formatExact(si, 'reach', computed.locale)
  const fullest = [...last].sort((a, b) => b.readings.length - a.readings.length)[0]
  if (fullest)
    return {
      stations: last.map((s) => exact(s.station)),
      offsets: fullest.readings.map((r) => exact(r.offset)),
      lines: fullest.readings.length,
    }
  const stations = count('practice.survey.stations')
  const rail = numberOf(computed.engine, 'rail.length') ?? 0
  return {
    stations: Array.from({ length: stations }, (_, i) =>
      printed((i * rail) / stations, 'reach', context),
    ),
    offsets: [],
    lines: count('practice.survey.lines'),
  }
}

const drainsAndGates = (file: FacilityFile): readonly string[] =>
  (file.oval.marks ?? [])
    .filter((m) => m.kind === 'drain' || m.kind === 'gate' || m.kind === 'water')
    .map((m) => m.name)

/** What stands ready in the first column: the places, races and machines of this facility. */
function readyRows(
  first: FormRows,
  form: Form,
  context: PlanContext,
  machine: Machine | undefined,
): Rows {
  const { file } = context.facility
  switch (first) {
    case 'survey-stations':
      return ticked(surveyGrid(context).stations)
    case 'races':
      return ticked(
        Array.from(
          { length: Math.round(numberOf(context.computed.engine, 'race-days.races') ?? 0) },
          (_, i) => String(i + 1),
        ),
      )
    case 'drains-and-gates':
      return ticked(drainsAndGates(file))
    case 'seen-at-hand-over':
      return ticked([
        ...drainsAndGates(file),
        ...(file.equipment ?? []).map((m) => `${m.name.charAt(0).toUpperCase()}${m.name.slice(1)}`),
      ])
    case 'checks': {
      const can = new Set<string>(machine?.can)
      return (form.checks ?? [])
        .filter(
          (c) => (c.can?.some((x) => can.has(x)) ?? true) && !c.except?.some((x) => can.has(x)),
        )
        .map((c) => ({ head: c.look, write: c.write ? 'line' : undefined }))
    }
  }
}

/**
 * Names of the lines across, from the rail outward, with their distances where a survey has set
 * them.
 */
function acrossColumns(context: PlanContext): FormTable['columns'] {
  const { lines, offsets } = surveyGrid(context)
  const { words } = context
  const name = (i: number): string =>
    i === 0
      ? words.forms.rail
      : i === lines - 1
        ? words.forms.outside
        : lines === 3
          ? words.forms.middle
          : `${words.forms.line} ${i + 1}`
  return Array.from({ length: lines }, (_, i) => ({
    head: offsets[i] === undefined ? name(i) : `${name(i)}, ${offsets[i]}`,
    wide: 1,
    write: 'line',
  }))
}

/** Blank rows where nothing is said: below what stands ready, and where nothing stands ready. */
const [below, least] = [2, 8]

function composeTable(
  form: Form,
  context: PlanContext,
  machine: Machine | undefined,
): ManualForm['table'] {
  const { table } = form
  if (!table) return undefined
  const columns = table.columns.map((c): FormTable['columns'][number] =>
    typeof c === 'string'
      ? { head: c, wide: 1, write: 'line' }
      : { head: c.head, wide: c.wide ?? 1, write: c.check ? 'check' : 'line' },
  )
  const [firstColumn, ...others] = columns
  const rows = table.first === undefined ? [] : readyRows(table.first, form, context, machine)
  return {
    columns: [
      ...(firstColumn ? [firstColumn] : []),
      ...(table.across ? acrossColumns(context) : []),
      ...others,
    ],
    rows,
    spare: rows.length > 0 ? (table.spare ?? below) : Math.max(table.spare ?? least, 1),
  }
}

const places = (list: Form['boxes']): readonly FormBox[] =>
  list.map((b) => ({ label: b.label, wide: b.wide, tall: b.tall ?? 1, choices: b.choices ?? [] }))

/** The forms that this facility has a use for. */
export function composeForms(forms: readonly Form[], context: PlanContext): readonly ManualForm[] {
  const compose = (form: Form, machine: Machine | undefined): ManualForm => ({
    id: machine ? `${form.id}-${machine.id}` : form.id,
    title: machine ? `${form.title}: ${machine.name}` : form.title,
    about: form.about,
    who: form.who,
    moment: form.moment,
    kept: form.kept,
    boxes: places(form.boxes),
    table: composeTable(form, context, machine),
    after: places(form.after ?? []),
    sign: form.sign,
  })
  return forms
    .filter((f) => applies(f.when, context.here))
    .flatMap((form) =>
      form.each === 'machine'
        ? (context.facility.file.equipment ?? []).map((m) => compose(form, m))
        : [compose(form, undefined)],
    )
}
