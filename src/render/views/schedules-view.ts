import type { ManualSchedule, ManualTable } from '../../model/manual/schedule.ts'
import type { Manual } from '../../model/manual.ts'
import type { Drawings } from '../drawings/drawings.ts'
import { type Html, html } from '../text/html.ts'
import { quantityHtml } from '../text/number-html.ts'
import { createDrawingPrinter, type DrawingPrinter } from './drawing-places.ts'
import { isNarrow } from './narrow-table.ts'
import type { Pen } from './pen.ts'

/** A cell that is a quantity and nothing else keeps number and unit together. */
const cell = (text: string, pen: Pen): Html =>
  /^−?[\d,./ ]+(?: ?[a-zA-Z°%/²³]+){0,2}$/.test(text) ? html(quantityHtml(text)) : pen.line(text)

export type TableView = ReturnType<typeof tableView>

/** Rows that stay together on a page. */
const shortTable = 6

/** Letters of a date or a name that stays on one line. */
const shortHead = 24

export const tableView = (t: ManualTable, pen: Pen) => ({
  id: t.id,
  title: pen.line(t.title),
  about: t.about === undefined ? undefined : pen.line(t.about),
  // A short table is not torn, nor one that is there to be written in.
  short: t.rows.length <= shortTable || t.rows.every((row) => row.every((c) => c === '')),
  narrow: isNarrow(
    t.heads.map(pen.plain),
    t.rows.map((row) => row.map(pen.plain)),
  ),
  estimate: t.estimate,
  heads: t.heads.map((h) => pen.line(h)),
  // Columns that a row leaves open are there to be written in.
  rows: t.rows.map(([head = '', ...cells]) => ({
    blank: [head, ...cells].every((c) => c === ''),
    // A row that goes on with the one above it has no head of its own.
    goesOn: head === '',
    head: cell(head, pen),
    long: head.length > shortHead,
    cells: Array.from({ length: t.heads.length - 1 }, (_, i) => cells[i] ?? '').map((c, i) => ({
      text: cell(c, pen),
      head: pen.plain(t.heads[i + 1] ?? ''),
    })),
  })),
})

export const scheduleView = (s: ManualSchedule, pen: Pen, draw: DrawingPrinter) => ({
  id: s.id,
  title: s.title,
  about: pen.block(s.about),
  drawings: s.drawings.map((id) => draw(id)),
  tables: s.tables.map((t) => tableView(t, pen)),
})

/**
 * Schedules with their tables.
 * @param draw The document's own printer, where it prints drawings elsewhere too.
 */
export const schedulesView = (
  manual: Manual,
  pen: Pen,
  drawings: Drawings,
  medium: 'paper' | 'screen',
  draw: DrawingPrinter = createDrawingPrinter(drawings, medium),
) => manual.schedules.map((s) => scheduleView(s, pen, draw))
