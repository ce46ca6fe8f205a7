import type { YamlFault } from './fault.ts'

/** Files of other programs that begin like this, and what to do with them. */
const disguises = [
  {
    begins: /^\{\\rtf/,
    message: 'this is a rich-text document (RTF), not plain text',
    hint: 'open it in the program that made it and save it as plain text (.txt, UTF-8), then name it .yaml',
  },
  {
    begins: /^\s*<(?:!doctype|html|\?xml|head|body)\b/i,
    message: 'this is a web page, not a facility file',
    hint: 'a page was saved where its text was meant: copy the text itself into an editor for plain text',
  },
  {
    begins: /^\s*```/,
    message:
      'the file begins with a fence of backticks, which belongs to the page it was copied from',
    hint: 'delete the lines that consist of ```',
  },
] as const

/** A file that is no YAML at all, by how it begins. */
export function disguise(text: string): YamlFault | undefined {
  const found = disguises.find(({ begins }) => begins.test(text))
  if (!found) return undefined
  const at = text.search(/\S/)
  const { message, hint } = found
  return { at, length: Math.max(1, text.slice(at).search(/\n|$/)), message, hint }
}

/** Files of other programs by their first bytes, and what each is called. */
const signatures = [
  { bytes: [0x50, 0x4b, 0x03, 0x04], what: 'a document or workbook of an office program' },
  { bytes: [0xd0, 0xcf, 0x11, 0xe0], what: 'a document or workbook of an older office program' },
  { bytes: [0x25, 0x50, 0x44, 0x46], what: 'a PDF' },
  { bytes: [0x89, 0x50, 0x4e, 0x47], what: 'a picture' },
  { bytes: [0xff, 0xd8, 0xff], what: 'a picture' },
  { bytes: [0xff, 0xfe], what: 'text in another encoding (UTF-16)' },
  { bytes: [0xfe, 0xff], what: 'text in another encoding (UTF-16)' },
] as const

/** What a file is that is no plain text, by its first bytes. */
export const fileKind = (bytes: Uint8Array): string | undefined =>
  signatures.find((s) => s.bytes.every((byte, i) => bytes[i] === byte))?.what
