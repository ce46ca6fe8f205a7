/** One field as it stands in the text: its characters, quotes undone, and where they are. */
export type CsvField = { readonly text: string; readonly start: number; readonly end: number }

/** A fault of the quotes: what it is, and where. */
type CsvFault = { readonly message: string; readonly at: number }

export type CsvRecords = {
  readonly records: readonly (readonly CsvField[])[]
  readonly fault: CsvFault | undefined
}

/** What can stand between the fields of a record. */
export const delimiters = [',', ';', '\t', '|'] as const
export type Delimiter = (typeof delimiters)[number]

type Reader = {
  readonly text: string
  readonly delimiter: Delimiter
  at: number
  fault: CsvFault | undefined
}

const endsField = (c: string | undefined, delimiter: Delimiter): boolean =>
  c === undefined || c === delimiter || c === '\n' || c === '\r'

/** White space that is no delimiter. */
const isBlank = (c: string | undefined, delimiter: Delimiter): boolean =>
  c === ' ' || (c === '\t' && delimiter !== '\t')

/** What stands between quotes; commas and line breaks are part of it, two quotes mean one. */
function readQuoted(reader: Reader): CsvField {
  const opened = reader.at
  let text = ''
  reader.at++
  for (;;) {
    const close = reader.text.indexOf('"', reader.at)
    if (close < 0) {
      reader.fault = { message: 'a quote is opened here and never closed', at: opened }
      reader.at = reader.text.length
      return { text, start: opened + 1, end: reader.at }
    }
    text += reader.text.slice(reader.at, close)
    reader.at = close + 1
    if (reader.text[reader.at] !== '"') return { text, start: opened + 1, end: close }
    text += '"'
    reader.at++
  }
}

function readField(reader: Reader): CsvField {
  const start = reader.at
  // People put a space after the comma; RFC 4180 would count it to the field.
  while (isBlank(reader.text[reader.at], reader.delimiter)) reader.at++
  const quoted = reader.text[reader.at] === '"' ? readQuoted(reader) : undefined
  const after = reader.at
  while (!endsField(reader.text[reader.at], reader.delimiter)) reader.at++
  if (!quoted) return { text: reader.text.slice(start, reader.at), start, end: reader.at }
  if (reader.text.slice(after, reader.at).trim() !== '')
    reader.fault ??= { message: 'something stands behind the closing quote', at: after }
  return quoted
}

/**
 * Parts a text of comma-separated values into records of fields (RFC 4180): quotes hold commas,
 * line breaks and doubled quotes; lines end with LF, CR LF or CR, the last one with or without.
 * @param delimiter What stands between fields, where that is no comma.
 * @param from Where the first record begins.
 */
export function readRecords(text: string, delimiter: Delimiter = ',', from = 0): CsvRecords {
  const reader: Reader = { text, delimiter, at: from, fault: undefined }
  const records: CsvField[][] = []
  while (reader.at < text.length && reader.fault === undefined) {
    const record = [readField(reader)]
    while (text[reader.at] === delimiter) {
      reader.at++
      record.push(readField(reader))
    }
    records.push(record)
    reader.at += text.startsWith('\r\n', reader.at) ? 2 : 1
  }
  return { records, fault: reader.fault }
}
