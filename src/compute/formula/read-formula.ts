import type { Formula, FormulaNode } from './formula.ts'

/** Commands that print one letter. */
const letters = new Set(
  'pi theta rho varphi gamma Delta delta mu alpha eta lambda omega ell sigma dots'.split(' '),
)
const signs = new Set(['cdot', 'times', 'le', 'ge'])
const spaces = new Set([',', ';', '!', 'quad'])
const functions = new Set('max min sum sin cos tan arctan arccos exp ln'.split(' '))
const closers: Readonly<Record<string, string>> = {
  '(': ')',
  '[': ']',
  '|': '|',
  '\\lceil': '\\rceil',
  '\\lfloor': '\\rfloor',
}

const tokenPattern =
  /\s+|\\[a-zA-Z]+|\\.|@[a-zA-Z][a-zA-Z0-9]*(?:-[a-z][a-zA-Z0-9]*)*|\d+(?:\{,\}\d{3})*(?:\.\d+)?|[^\s\\]/gy

/** Where reading stands in the list of tokens. */
type Reader = { readonly tex: string; readonly tokens: readonly string[]; at: number }

const fault = (reader: Reader, what: string): SyntaxError =>
  new SyntaxError(`formula ${reader.tex}: ${what}`)

const next = (reader: Reader): string => reader.tokens[reader.at] ?? ''

function take(reader: Reader): string {
  const token = next(reader)
  if (token === '') throw fault(reader, 'ends too early')
  reader.at++
  return token
}

function expect(reader: Reader, wanted: string): void {
  const token = take(reader)
  if (token !== wanted) throw fault(reader, `"${token}" where "${wanted}" belongs`)
}

/** All parts up to `end`, which is taken too. */
function readUntil(reader: Reader, end: string): FormulaNode[] {
  const nodes: FormulaNode[] = []
  while (next(reader) !== end) nodes.push(readNode(reader))
  reader.at++
  return nodes
}

/** What stands between braces, as it is. */
function readVerbatim(reader: Reader): string {
  expect(reader, '{')
  let text = ''
  while (next(reader) !== '}') text += take(reader)
  reader.at++
  return text
}

/** `\left(…\right)`, `\bigl[…\bigr]`. */
function readSized(reader: Reader, open: string, close: string): FormulaNode {
  const bracket = take(reader)
  const closing = closers[bracket]
  if (closing === undefined) throw fault(reader, `"${bracket}" is no bracket`)
  const of = readUntil(reader, close)
  expect(reader, closing)
  return { kind: 'fenced', open: `${open}${bracket}`, close: `${close}${closing}`, of }
}

const readers: Readonly<Record<string, (reader: Reader) => FormulaNode>> = {
  frac: (r) => ({ kind: 'fraction', command: 'frac', over: readNode(r), under: readNode(r) }),
  tfrac: (r) => ({ kind: 'fraction', command: 'tfrac', over: readDigit(r), under: readDigit(r) }),
  sqrt: (r) => ({ kind: 'over', command: 'sqrt', gap: '', of: readNode(r) }),
  bar: (r) => ({
    kind: 'over',
    command: 'bar',
    gap: /^\s/.test(next(r)) ? take(r) : '',
    of: readNode(r),
  }),
  text: (r) => ({ kind: 'upright', tex: readVerbatim(r) }),
  textstyle: () => ({ kind: 'style', tex: '\\textstyle' }),
  left: (r) => readSized(r, '\\left', '\\right'),
  bigl: (r) => readSized(r, '\\bigl', '\\bigr'),
}

/** An argument without braces is a single digit: `\tfrac12` is a half. */
function readDigit(reader: Reader): FormulaNode {
  const token = next(reader)
  const [first = '', rest] = [token.slice(0, 1), token.slice(1)]
  if (!/^\d/.test(token) || rest === '')
    return readNode(reader)
    // The token is parted; tokens are this reader's own copy.
  ;(reader.tokens as string[]).splice(reader.at, 1, first, rest)
  return readNode(reader)
}

function readCommand(reader: Reader, command: string): FormulaNode {
  const own = readers[command]
  if (own) return own(reader)
  const tex = `\\${command}`
  if (letters.has(command)) return { kind: 'letter', tex }
  if (signs.has(command)) return { kind: 'sign', tex }
  if (spaces.has(command)) return { kind: 'space', tex }
  if (functions.has(command)) return { kind: 'function', name: command }
  throw fault(reader, `"${tex}" is not known`)
}

function readNode(reader: Reader): FormulaNode {
  const token = take(reader)
  if (/^\s/.test(token)) return { kind: 'space', tex: token }
  if (token.startsWith('\\')) return readCommand(reader, token.slice(1))
  if (token.startsWith('@')) return { kind: 'name', name: token.slice(1) }
  if (/^\d/.test(token)) return { kind: 'number', tex: token }
  if (token === '{') return { kind: 'group', of: readUntil(reader, '}') }
  if (token === "'") return { kind: 'script', mark: token, of: [] }
  if (token === '_' || token === '^') return { kind: 'script', mark: token, of: [readNode(reader)] }
  const close = closers[token]
  if (close !== undefined)
    return { kind: 'fenced', open: token, close, of: readUntil(reader, close) }
  if (/^[\p{L}°]$/u.test(token)) return { kind: 'letter', tex: token }
  if (/^[-+=<>/,]$/.test(token)) return { kind: 'sign', tex: token }
  throw fault(reader, `"${token}" is not expected here`)
}

/** The formulas of calculations, which are asked for many times; there are some hundreds. */
const readBefore = new Map<string, Formula>()

/**
 * Reads the TeX of a formula: the few commands that formulas here use, and `@name` for inputs.
 * @throws SyntaxError when something stands in it that is not known, or a bracket stays open.
 */
export function readFormula(tex: string): Formula {
  const known = readBefore.get(tex)
  if (known) return known
  const reader: Reader = { tex, tokens: tex.match(tokenPattern) ?? [], at: 0 }
  const nodes: FormulaNode[] = []
  while (reader.at < reader.tokens.length) nodes.push(readNode(reader))
  readBefore.set(tex, nodes)
  return nodes
}
