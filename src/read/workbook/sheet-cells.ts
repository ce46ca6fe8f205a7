import { type NumberFormat, shownNumber } from './number-formats.ts'
import { cellAt, type SheetCell } from './sheet.ts'
import { readXml } from './xml-elements.ts'

/** Strings that cells share, by number; what a reading aid says above them is left out. */
export function readSharedStrings(bytes: Uint8Array): readonly string[] {
  const strings: string[] = []
  let text: string | undefined
  let aids = 0
  let inText = false
  readXml(bytes, {
    open: (name) => {
      if (name === 'si') text = ''
      if (name === 'rPh') aids++
      inText = name === 't' && aids === 0
    },
    text: (part) => {
      if (inText && text !== undefined) text += part
    },
    close: (name) => {
      if (name === 't') inText = false
      if (name === 'rPh') aids--
      if (name === 'si') strings.push(text ?? '')
    },
  })
  return strings
}

/** What the cells of a workbook refer to. */
export type Shared = {
  readonly strings: readonly string[]
  readonly formats: readonly NumberFormat[]
  readonly from1904: boolean
  /** Counts a cell; throws where there are too many. */
  readonly count: () => void
}

/** A cell while it is read. */
type Raw = {
  readonly row: number
  readonly column: number
  readonly type: string
  readonly style: number
  value: string | undefined
  inline: string
  formula: boolean
}

/** What a cell says; nothing for an empty one. A formula is never worked, only its result is taken. */
function toCell(raw: Raw, { strings, formats, from1904 }: Shared): SheetCell | undefined {
  const { row, column, type, value } = raw
  const at = { row, column }
  if (type === 'inlineStr')
    return raw.inline === '' ? undefined : { text: raw.inline, kind: 'words', ...at }
  if (value === undefined || (value === '' && type !== 'str'))
    return raw.formula ? { text: '', kind: 'fault', ...at } : undefined
  if (type === 's') {
    const text = strings[Number(value)] ?? ''
    return text === '' ? undefined : { text, kind: 'words', ...at }
  }
  if (type === 'str') return value === '' ? undefined : { text: value, kind: 'words', ...at }
  if (type === 'e') return { text: value, kind: 'fault', ...at }
  if (type === 'b') return { text: value === '1' ? 'yes' : 'no', kind: 'words', ...at }
  if (type === 'd') return { text: value.replace(/T00:00(:00)?(\.0+)?Z?$/, ''), kind: 'day', ...at }
  const number = Number(value)
  if (!Number.isFinite(number)) return { text: value, kind: 'fault', ...at }
  return {
    ...shownNumber(number, formats[raw.style] ?? { is: 'plain', unit: '' }, from1904),
    ...at,
  }
}

/** The rows of a sheet that hold something. */
export function readCells(bytes: Uint8Array, shared: Shared): readonly (readonly SheetCell[])[] {
  const rows = new Map<number, SheetCell[]>()
  let row = 0
  let column = 0
  let raw: Raw | undefined
  let inside: 'v' | 't' | undefined
  const finish = (): void => {
    const cell = raw && toCell(raw, shared)
    raw = undefined
    if (!cell) return
    const there = rows.get(cell.row)
    if (there) there.push(cell)
    else rows.set(cell.row, [cell])
  }
  readXml(bytes, {
    open: (name, attributes) => {
      if (name === 'row') {
        row = Number(attributes['r'] ?? row + 1)
        column = 0
      } else if (name === 'c') {
        const at = cellAt(attributes['r'] ?? '') ?? { row, column: column + 1 }
        column = at.column
        shared.count()
        raw = {
          ...at,
          type: attributes['t'] ?? 'n',
          style: Number(attributes['s'] ?? 0),
          value: undefined,
          inline: '',
          formula: false,
        }
      } else if (name === 'f' && raw) raw.formula = true
      else if (name === 'v' || name === 't') {
        inside = name
        if (raw && name === 'v') raw.value = ''
      }
    },
    text: (text) => {
      if (!raw) return
      if (inside === 'v') raw.value += text
      else if (inside === 't') raw.inline += text
    },
    close: (name) => {
      if (name === 'v' || name === 't') inside = undefined
      if (name === 'c') finish()
    },
  })
  return [...rows.entries()]
    .sort(([a], [b]) => a - b)
    .map(([, cells]) => cells.toSorted((a, b) => a.column - b.column))
}
