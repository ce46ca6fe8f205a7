export type Scan = {
  /** Numbers of marked content, once for each time that they are opened. */
  readonly mcids: readonly number[]
  /**
   * Operators that paint outside any marked content that is either numbered or an artifact, by how
   * often they do.
   */
  readonly unmarked: ReadonlyMap<string, number>
  /** Numbers of marked content that lies inside an artifact, or holds one. */
  readonly mixed: readonly number[]
  /** False when marked content is closed that was never opened, or the other way round. */
  readonly balanced: boolean
}

const paints = new Set([
  'f',
  'F',
  'f*',
  'S',
  's',
  'B',
  'B*',
  'b',
  'b*',
  'Tj',
  'TJ',
  "'",
  '"',
  'Do',
  'sh',
  'EI',
])

/**
 * Strings, hexadecimal strings, comments, images in the stream, and words between white space and
 * brackets.
 */
const token =
  /\((?:[^()\\]|\\[\s\S]|\((?:[^()\\]|\\[\s\S]|\([^()]*\))*\))*\)|<<|>>|<[\da-fA-F\s]*>|%[^\r\n]*|\bID\s[\s\S]*?\sEI(?=\s|$)|[[\]]|\/[^\s()<>[\]{}/%]*|[^\s()<>[\]{}/%]+/g

/**
 * Reads a page content stream (ISO 32000-1, 14.6), however it is broken into lines.
 * @param mcidOf Number in a property list that stands in the resources.
 */
export function scanContent(
  content: string,
  mcidOf: (properties: string) => number | undefined = () => undefined,
): Scan {
  const mcids: number[] = []
  const mixed: number[] = []
  const unmarked = new Map<string, number>()
  const open: { readonly mcid: number | undefined; readonly artifact: boolean }[] = []
  let [marked, artifacts, balanced] = [0, 0, true]

  const begin = (tag: string, mcid: number | undefined): void => {
    const artifact = tag === '/Artifact'
    open.push({ mcid, artifact })
    if (mcid !== undefined) {
      mcids.push(mcid)
      marked++
      if (artifacts > 0) mixed.push(mcid)
    }
    if (artifact) {
      artifacts++
      const around = open.find((o) => o.mcid !== undefined)?.mcid
      if (around !== undefined) mixed.push(around)
    }
  }
  const operator = (name: string, operands: readonly string[]): void => {
    if (name === 'BMC') begin(operands.at(-1) ?? '', undefined)
    else if (name === 'BDC') {
      const at = operands.lastIndexOf('/MCID')
      const list = operands.at(-1) ?? ''
      if (at > 0) begin(operands[0] ?? '', Number(operands[at + 1]))
      else begin(operands[0] ?? '', list.startsWith('/') ? mcidOf(list.slice(1)) : undefined)
    } else if (name === 'EMC') {
      const closed = open.pop()
      if (!closed) balanced = false
      if (closed?.mcid !== undefined) marked--
      if (closed?.artifact) artifacts--
    } else if (paints.has(name) && marked === 0 && artifacts === 0)
      unmarked.set(name, (unmarked.get(name) ?? 0) + 1)
  }
  let operands: string[] = []
  for (const [word] of content.matchAll(token)) {
    const first = word.charCodeAt(0)
    // Letters and quotes begin operators; `true`, `false` and `null` are operands that nothing here
    // asks for.
    if (
      (first >= 65 && first <= 90) ||
      (first >= 97 && first <= 122) ||
      first === 39 ||
      first === 34
    ) {
      operator(word.startsWith('ID') ? 'EI' : word, operands)
      operands = []
    } else operands.push(word)
  }
  return { mcids, unmarked, mixed, balanced: balanced && open.length === 0 }
}
