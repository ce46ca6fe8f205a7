import { zipSync } from 'fflate'
import writeWorkbook from 'write-excel-file/universal'
import type { DataTable } from './tables.ts'

/** Widths of columns in characters: no wider than a line of text that can be read. */
const widest = 60

function widths({ heads, rows }: DataTable): { readonly width: number }[] {
  return heads.map((head, i) => ({
    width: Math.min(
      widest,
      2 + Math.max(head.length, ...rows.map((row) => String(row[i] ?? '').length)),
    ),
  }))
}

/** What a sheet may be called (ECMA-376): at most 31 characters, and none of these. */
const sheetName = (title: string): string =>
  title
    .replace(/[[\]:*?/\\]/g, ' ')
    .slice(0, 31)
    .trim()

/** The first moment that a zip archive can say. */
const anyTime = new Date(1980, 0, 1)

/**
 * The parts of a workbook as a file. Archives say when their parts were written: always the same
 * moment, so that the same parts give the same bytes.
 */
export const packed = (parts: Readonly<Record<string, Uint8Array>>): Uint8Array =>
  zipSync(
    Object.fromEntries(
      Object.entries(parts).map(([name, data]) => [name, [data, { mtime: anyTime }] as const]),
    ) as Parameters<typeof zipSync>[0],
  )

/** Where entries of an archive say when they were written (ZIP file format, 4.3.7 and 4.3.12). */
const [timeInDirectory, timeInEntry] = [12, 10]

/** The first moment that an archive can say: midnight, then the first day of 1980. */
const firstMoment = 0x0021_0000

/**
 * An archive as it would have been packed at the first moment that one can say, its parts as they are.
 * @param archive Without a comment at its end.
 */
function atAnyTime(archive: Uint8Array): Uint8Array {
  const view = new DataView(archive.buffer, archive.byteOffset, archive.byteLength)
  const end = archive.length - 22
  let at = view.getUint32(end + 16, true)
  for (let left = view.getUint16(end + 10, true); left > 0; left--) {
    view.setUint32(at + timeInDirectory, firstMoment, true)
    view.setUint32(view.getUint32(at + 42, true) + timeInEntry, firstMoment, true)
    const lengths = [28, 30, 32].map((place) => view.getUint16(at + place, true))
    at += lengths.reduce((sum, length) => sum + length, 46)
  }
  return archive
}

/** Tables as one workbook (ECMA-376, .xlsx), one sheet each, heads kept in sight. */
export async function workbookOf(tables: readonly DataTable[]): Promise<Uint8Array> {
  const file = writeWorkbook(
    tables.map((table) => ({
      sheet: sheetName(table.title),
      columns: widths(table),
      stickyRowsCount: 1,
      data: [
        table.heads.map((value) => ({ value, type: String, fontWeight: 'bold' as const })),
        ...table.rows.map((row) =>
          row.map((value) =>
            typeof value === 'number'
              ? { value, type: Number }
              : value === null
                ? null
                : { value, type: String },
          ),
        ),
      ],
    })),
  )
  return atAnyTime(new Uint8Array(await (await file.toBlob()).arrayBuffer()))
}
