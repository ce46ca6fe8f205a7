import { factSpec } from '../../../model/fact-spec.ts'
import type { FormBox, ManualForm } from '../../../model/manual/form.ts'
import { fill } from '../../../model/pattern.ts'
import { styleOf, unitText } from '../../../model/quantity/format-quantity.ts'
import { kindOf } from '../../../model/quantity/kinds.ts'
import {
  depthName,
  isKeptNumber,
  type KeptNumber,
  keptNumbers,
  type PhoneField,
} from '../../../model/records.ts'
import { fieldNames } from '../../forms/field-names.ts'
import type { Pen } from '../../views/pen.ts'

/** A place to write on a phone. */
type Asked = {
  readonly id: string
  /** What is kept of it: its own name, or that of its place on the form. */
  readonly name: string
  readonly label: string
  /** Words take as many lines as they need. */
  readonly area: boolean
  readonly unit: string
  /** Which keys a phone shows. */
  readonly keys: 'decimal' | 'numeric' | 'text'
  readonly counted: boolean
  readonly choices: readonly { readonly id: string; readonly text: string }[]
}

/** Fractions and signs cannot be typed where a phone shows digits alone. */
function keysOf(name: KeptNumber, { manual }: Pen): Asked['keys'] {
  const kind = factSpec(keptNumbers[name])?.kind ?? 'ratio'
  if (kind === 'count') return 'numeric'
  const { form } = styleOf(kind, manual.facility.system)
  return form === 'fraction' || kind === 'temperature' ? 'text' : 'decimal'
}

function unitOf(name: KeptNumber, { manual, words }: Pen): string {
  const { system, currency } = manual.facility
  const style = styleOf(factSpec(keptNumbers[name])?.kind ?? 'ratio', system)
  return unitText(style, { system, currency, unitWords: words.units })
}

/** @param place The name of the place on the form, for words that have none of their own. */
function asked(
  form: string,
  field: PhoneField,
  label: string,
  place: string,
  area: boolean,
  pen: Pen,
): Asked {
  const number = isKeptNumber(field) ? field : undefined
  const name = field === 'words' || field === 'time' ? place : field
  return {
    id: `${form}-${name}`.replace(/[^\w-]+/g, '-'),
    name,
    label,
    area: area && number === undefined,
    unit: number === undefined ? '' : unitOf(number, pen),
    keys: number === undefined ? 'text' : keysOf(number, pen),
    counted:
      number !== undefined &&
      kindOf(factSpec(keptNumbers[number])?.kind ?? 'ratio') === kindOf('count'),
    choices: [],
  }
}

/** A box of the form: one place to write, or several below the words of the form. */
function boxView(form: string, box: FormBox, name: (label: string) => string, pen: Pen) {
  const label = pen.plain(box.label)
  const place = `${form}.${name(label)}`
  // The day stands above all records.
  const fields = box.keeps.filter((field) => field !== 'day')
  const own = (field: PhoneField): string => {
    if (field === 'time') return pen.words.records.time
    if (fields.length === 1) return label
    return isKeptNumber(field) ? pen.words.records.fields[field] : pen.words.records.inWords
  }
  const area = box.tall > 1 || box.wide > 3
  const asks = fields.map((field) => asked(form, field, own(field), place, area, pen))
  const choices = box.choices.map((text, i) => ({
    id: `${form}-${name(label)}-${i}`,
    text: pen.plain(text),
  }))
  return {
    legend: asks.length > 1 ? label : '',
    asks: asks.map((ask) => ({ ...ask, choices })),
  }
}

type Columns = NonNullable<ManualForm['table']>['columns']

/** Samples: rows whose columns keep numbers, each with a place to write for every one. */
function rowFields(form: string, columns: Columns, pen: Pen) {
  const name = fieldNames()
  const checks = columns.filter(({ write }) => write === 'check')
  return columns.flatMap((column) => {
    const head = pen.plain(column.head)
    // Ticks beside each other are one answer.
    if (column.write === 'check') {
      if (column !== checks[0]) return []
      const choices = checks.map((c, i) => ({ id: `${form}-feel-${i}`, text: pen.plain(c.head) }))
      return [
        {
          ...asked(form, 'words', choices.map((c) => c.text).join(', '), 'feel', false, pen),
          choices,
        },
      ]
    }
    const slug = name(head)
    return column.keeps.map((field) =>
      asked(
        form,
        field,
        column.keeps.length > 1 && isKeptNumber(field) ? pen.words.records.fields[field] : head,
        slug,
        false,
        pen,
      ),
    )
  })
}

/** The grid of a depth survey: a place to write for each station and line. */
function gridView(pen: Pen) {
  const { stations, offsets } = pen.manual.records
  const { words } = pen
  return {
    lines: offsets.map(({ text }) => text),
    keys: keysOf('depth', pen),
    span: offsets.length + 1,
    rows: stations.map((station) => ({
      station: station.text,
      cells: offsets.map((offset) => ({
        name: depthName(station.si, offset.si),
        id: depthName(station.si, offset.si).replace(/[^\w]+/g, '-'),
        line: offset.text,
        label: fill(words.records.place, { station: station.text, offset: offset.text }),
      })),
    })),
  }
}

/** What of a record is drawn over the season. */
const charted: Readonly<Record<string, KeptNumber>> = {
  'daily-log': 'high',
  'depth-grid': 'depth',
  'moisture-log': 'moisture',
  'watering-log': 'loads',
  'rain-record': 'rain',
}

/** A form as a phone asks for it. */
function recordView(form: ManualForm, pen: Pen) {
  const { id, table } = form
  const name = fieldNames()
  const columns = table?.columns ?? []
  const isGrid = columns.some((c) => c.keeps.includes('depth'))
  const hasNumbers = columns.some((c) => c.keeps.some(isKeptNumber))
  const heads = columns.map((c) => pen.plain(c.head)).join(' · ')
  const chart = charted[id]
  return {
    id,
    phone: form.phone,
    title: pen.line(form.title),
    about: pen.line(form.about),
    boxes: form.boxes.map((b) => boxView(id, b, name, pen)).filter((b) => b.asks.length > 0),
    grid: isGrid ? gridView(pen) : undefined,
    sample:
      hasNumbers && !isGrid
        ? rowFields(id, columns, pen).map((field) => ({ ...field, row: true }))
        : undefined,
    lines:
      table && !hasNumbers
        ? {
            ...asked(
              id,
              table.keeps ?? 'words',
              `${pen.words.records.lines} ${heads}`,
              `${id}.lines`,
              true,
              pen,
            ),
          }
        : undefined,
    after: form.after.map((b) => boxView(id, b, name, pen)),
    chart: chart && { name: chart, title: pen.words.records.fields[chart] },
  }
}

/** The records that a phone can keep, in the order of the forms. */
export const recordViews = (pen: Pen) =>
  pen.manual.forms.filter((form) => form.phone !== undefined).map((form) => recordView(form, pen))
