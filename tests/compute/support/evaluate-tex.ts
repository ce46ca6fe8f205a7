import { toUnit } from '../../../src/model/quantity/format-quantity.ts'

/** What a unit written inside a formula stands for, in SI. */
const named = ['min', 'h', 's', 'day', 'lb', 'in', 'mi', 'gal/min'] as const
const units: Readonly<Record<string, string>> = {
  ...Object.fromEntries(named.map((unit) => [unit, String(1 / toUnit(1, unit))])),
  'fl oz': String(1 / toUnit(1, 'floz')),
  'µg/m³': '0.000000001',
  water: '1000',
}

const closing: Readonly<Record<string, string>> = { '{': '}' }

/** The group that opens at `at`, without its braces, and where it ends. */
function groupAt(tex: string, at: number): { inner: string; end: number } {
  let depth = 0
  for (let i = at; i < tex.length; i++) {
    if (tex[i] === '{') depth++
    if (tex[i] === closing['{'] && --depth === 0) return { inner: tex.slice(at + 1, i), end: i + 1 }
  }
  throw new SyntaxError(`unclosed group in ${tex}`)
}

/** Rewrites `\command{a}{b}` from the inside out. */
function command(
  tex: string,
  name: string,
  groups: number,
  write: (...inner: string[]) => string,
): string {
  const at = tex.indexOf(`\\${name}{`)
  if (at < 0) return tex
  const inner: string[] = []
  let end = at + name.length + 1
  for (let i = 0; i < groups; i++) {
    const group = groupAt(tex, end)
    inner.push(group.inner)
    end = group.end
  }
  return command(tex.slice(0, at) + write(...inner) + tex.slice(end), name, groups, write)
}

/** A formula of a worksheet as JavaScript over `v`, for the few commands that formulas here use. */
export function texToCode(tex: string): string {
  let code = tex.replaceAll('\\rho_{\\text{water}}', ' 1000 ').replaceAll('\\tfrac', '\\frac')
  code = command(code, 'frac', 2, (a, b) => ` ((${a})/(${b})) `)
  code = command(code, 'sqrt', 1, (a) => ` Math.sqrt(${a}) `)
  code = command(code, 'text', 1, (a) => ` ${units[a] ?? `unknown_unit_${a}`} `)
  code = code
    .replaceAll('\\left\\lceil', ' Math.ceil(-1e-9+')
    .replaceAll('\\right\\rceil', ') ')
    .replace(/\\(?:left|bigl)\(/g, '(')
    .replace(/\\(?:right|bigr)\)/g, ')')
    .replaceAll('\\arctan(', ' Math.atan(')
    .replace(/\\(cos|sin|tan|max)\(/g, ' Math.$1(')
    .replace(/\|([^|]*)\|/g, ' Math.abs($1) ')
    .replaceAll('\\cdot', ' * ')
    .replaceAll('\\pi', ' Math.PI ')
    .replaceAll('\\,', ' ')
    .replace(/\^\{([^{}]+)\}/g, ' ** ($1) ')
    .replace(/\^(\d)/g, ' ** $1 ')
    .replace(/@([a-zA-Z]\w*)/g, ' v.$1 ')
    .replace(/\bg\b(?![.\w])/g, ' 9.80665 ')
  // What stands side by side is multiplied.
  const tokens =
    code.match(
      /Math\.(?:sqrt|ceil|cos|sin|tan|atan|abs|max)\(|Math\.PI|v\.\w+|\d+(?:\.\d+)?|-?1e-9|\*\*|[-+*/(),]/g,
    ) ?? []
  if (tokens.join('') !== code.replace(/\s/g, ''))
    throw new SyntaxError(`cannot read all of ${tex}`)
  return tokens.reduce((out, token, i) => {
    const before = tokens[i - 1] ?? ''
    const ends = /^(?:Math\.PI|v\.\w+|\d.*|\))$/.test(before)
    const starts = /^(?:Math|v\.|\d|\()/.test(token)
    return out + (ends && starts ? '*' : '') + token
  }, '')
}

/** Works a formula out with the numbers given for its names. */
export const evaluateTex = (tex: string, values: Readonly<Record<string, number>>): number =>
  Number(new Function('v', `return ${texToCode(tex)}`)(values))
