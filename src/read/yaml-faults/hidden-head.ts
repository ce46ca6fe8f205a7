import { isEntryIn } from '../../model/entry-names.ts'

/** The head of a group behind a #, and the line that it stands in. */
export type HiddenHead = { readonly name: string; readonly line: number }

/** `#  harrow:`, with nothing behind it, as a file of explained entries has them. */
const headPattern = /^#((?: {2})*)([a-z][a-z0-9-]*):\s*$/

/** Columns before the first word, and the name that begins an entry or the first one of a point. */
function entryIn(text: string): { readonly indent: number; readonly name: string } | undefined {
  const [, indent = '', name = ''] =
    /^( *)(?:- *(?:\{ *)?)?([a-z][a-z0-9-]*):(?:\s|$)/.exec(text) ?? []
  return name === '' ? undefined : { indent: indent.length, name }
}

const isRemark = (text: string): boolean => /^\s*(?:#.*)?$/.test(text)

/**
 * The heads, still behind #, of the groups that an entry belongs to by the order of a file in which
 * every entry is explained; outermost first. Empty where it stands in its group.
 * @param at Number of the entry's line, from 1.
 * @param past Whether entries that stand between it and the head are passed over.
 */
export function hiddenHeads(
  lines: readonly string[],
  at: number,
  past: boolean,
): readonly HiddenHead[] {
  const entry = entryIn(lines[at - 1] ?? '')
  if (!entry) return []
  const found: HiddenHead[] = []
  let { indent, name } = entry
  for (let i = at - 2; i >= 0 && indent > 0; i--) {
    const text = lines[i] ?? ''
    const [, spaces = '', head = ''] = headPattern.exec(text) ?? []
    if (head !== '') {
      if (spaces.length !== indent - 2) {
        // A head further out ends the groups above it.
        if (spaces.length < indent - 2) return found
        continue
      }
      if (!isEntryIn(head, name)) return found
      found.unshift({ name: head, line: i + 1 })
      indent -= 2
      name = head
      continue
    }
    if (isRemark(text)) continue
    const stands = text.search(/\S/)
    // The group that it stands in, or an entry beside it that says where it stands.
    if (stands < indent || (stands === indent && found.length > 0) || !past) return found
  }
  return found
}

/** What to do about heads that are still behind #. */
export function hiddenHeadHint(heads: readonly HiddenHead[]): string {
  const named = heads.map(({ name, line }) => `"${name}:" in line ${line}`).join(' and ')
  return `take the # away before ${named} too`
}
