import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { baseFor, standingIn } from '../../src/cli/workbook/standing.ts'
import type { Base } from '../../src/edit/workbook/base.ts'
import { layOut } from '../../src/edit/workbook/lay-out.ts'
import type { Laid, LaidCell } from '../../src/edit/workbook/layout.ts'
import { type Standing, type TakenIn, takeIn } from '../../src/edit/workbook/take-in.ts'
import type { UnitSystem } from '../../src/model/quantity/kinds.ts'
import { readYaml } from '../../src/read/read-yaml.ts'
import { facilityWorkbook } from '../../src/render/workbook/facility-workbook.ts'
import { date, demoFolder } from './demo.ts'

/** What somebody types into a workbook: a text, by sheet, entry or head, and line of a list. */
export type Typed = {
  readonly sheet: string
  /** Path of an entry, or head of a column. */
  readonly at: string
  /** Line of a list, counted from 0. */
  readonly line?: number
  readonly text: string
}

/** The answers without which there is no manual, as somebody types them. */
export const fewestAnswers = (
  fair: Readonly<
    Record<'name' | 'town' | 'units' | 'paper' | 'lap' | 'straight' | 'material', string>
  >,
): readonly Typed[] => [
  { sheet: 'Fair', at: 'name', text: fair.name },
  { sheet: 'Fair', at: 'place.town', text: fair.town },
  { sheet: 'Fair', at: 'units', text: fair.units },
  { sheet: 'Fair', at: 'paper', text: fair.paper },
  { sheet: 'Oval', at: 'oval.lap', text: fair.lap },
  { sheet: 'Oval', at: 'oval.straight', text: fair.straight },
  { sheet: 'Cushion and base', at: 'cushion.material', text: fair.material },
]

/** The cell that is meant: row and column, from 0. */
function cellOf({ sheets }: Laid, { sheet, at, line }: Typed): readonly [number, number] {
  const rows = sheets.find((s) => s.title === sheet)?.rows ?? []
  const found =
    line === undefined
      ? ([rows.findIndex((row) => row[4]?.text === at), 1] as const)
      : ([
          4 + line,
          (rows[1] ?? []).findIndex((cell) => cell?.text.toLowerCase() === at.toLowerCase()),
        ] as const)
  if (found.some((n) => n < 0)) throw new Error(`no ${at} on ${sheet}`)
  return found
}

/** The cell that is meant, by the name that it has in its sheet, such as `B7`. */
export function cellName(laid: Laid, typed: Typed): string {
  const [row, column] = cellOf(laid, typed)
  return `${String.fromCharCode('A'.charCodeAt(0) + column)}${row + 1}`
}

/** A workbook as somebody has filled it in. */
export async function filledIn(
  base: Base,
  system: UnitSystem,
  typed: readonly Typed[],
): Promise<Uint8Array> {
  const laid = layOut(base, system, nowhere.procedures)
  const rows = new Map(laid.sheets.map((s) => [s.title, s.rows.map((row) => [...row])] as const))
  for (const one of typed) {
    const [row, column] = cellOf(laid, one)
    const cells: LaidCell[] = rows.get(one.sheet)?.[row] ?? []
    cells[column] = { text: one.text, role: 'input' }
  }
  return await facilityWorkbook({
    ...laid,
    sheets: laid.sheets.map((s) => ({ ...s, rows: rows.get(s.title) ?? [] })),
  })
}

export async function demoStanding(id: string): Promise<Standing> {
  const { standing } = await standingIn(demoFolder(id), date)
  if (!standing) throw new Error(`${id} has faults`)
  return standing
}

export const demoText = (id: string): Promise<string> =>
  readFile(path.join(demoFolder(id), 'facility.yaml'), 'utf8')

const { standing: blank } = await standingIn(path.join(demoFolder('larkmoor'), 'none'), date)
if (!blank) throw new Error('a folder with nothing in it has faults')

/** A folder with nothing in it. */
export const nowhere: Standing = blank

/** A facility of which only the file is there. */
export const standingOf = (text: string): Standing => ({
  ...nowhere,
  tree: readYaml({ path: 'facility.yaml', text }).value,
})

export const takeWorkbook = (bytes: Uint8Array, standing: Standing): TakenIn =>
  takeIn({ name: 'facility.xlsx', bytes, text: undefined }, standing)

/** A demo's workbook with changes, taken into the demo. */
export async function retyped(id: string, typed: readonly Typed[]): Promise<TakenIn> {
  const standing = await demoStanding(id)
  const system = id === 'brambleford' ? 'metric' : 'us'
  return takeWorkbook(await filledIn(baseFor(standing), system, typed), standing)
}

/** Problems as `Sheet!B7: message`. */
export const told = ({ problems }: TakenIn): readonly string[] =>
  problems.map(({ place, message }) => `${place.cell?.sheet}!${place.cell?.name}: ${message}`)
