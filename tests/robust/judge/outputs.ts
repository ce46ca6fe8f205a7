import { Script } from 'node:vm'
import { csvParseRows } from 'd3-dsv'
import { slipIn } from './slips.ts'

/** A text that was made: pages, drawings, tables, calendars, data. */
export type Output = { readonly path: string; readonly text: string }

/** Text with some characters around a place, to be told. */
const around = (text: string, at: number): string =>
  text.slice(Math.max(0, at - 80), at + 80).replace(/\s+/g, ' ')

const found = (what: string, pattern: RegExp, text: string): readonly string[] => {
  const match = pattern.exec(text)
  return match ? [`${what}: ${around(text, match.index)}`] : []
}

const styleOrScript = /<(style|script)\b[^>]*>[\s\S]*?<\/\1>/g

/** An address that a page may lead to: its own files, telephones, maps, and what the facility says. */
const ownAddress =
  /^(?:#|tel:|geo:|maps:\?q(?:=|&#x3D;)|https:\/\/binder\.invalid\/#|data:image\/svg\+xml,(?!.*zq)|(?![a-z][a-z0-9+.-]*:|\/\/|\\)[\w./#%?=&;,:+~ -]*$)/is

function addresses(text: string, allowed: readonly string[]): readonly string[] {
  return [...text.matchAll(/\s(?:href|src|action|formaction|xlink:href|data|poster)="([^"]*)"/g)]
    .map(([, address = '']) => address)
    .filter(
      (address) => !ownAddress.test(address) && !allowed.some((start) => address.startsWith(start)),
    )
    .slice(0, 1)
    .map((address) => `an address that is not ours: ${address.slice(0, 120)}`)
}

/** Elements that no page has. */
const strangeElement =
  /<(?:zq|iframe|object|embed|base|foreignobject|applet|frame|animate|set\s)|<[a-z][^<>]*?\s(?:zq|on[a-z]+\s*=)/i

/** @param allowed How addresses outside may begin. */
function faultsOfPage(text: string, allowed: readonly string[]): readonly string[] {
  const body = text.replace(styleOrScript, '')
  const slip = slipIn(body)
  return [
    ...(slip === undefined
      ? []
      : found(`"${slip}"`, new RegExp(slip.replace(/[[\]()-]/g, '\\$&')), body)),
    ...found('markup of the input', strangeElement, body.replace(/="[^"]*"/g, '=""')),
    ...found('a style in an element', /<[a-z][^<>]*\sstyle="[^"]*zq/i, body),
    ...found(
      'a text cut in two',
      /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/,
      body,
    ),
    ...found('a mark that was left', /[\ue000\ue001]/, body),
    ...addresses(body, allowed),
  ]
}

/** Style in which words of a facility stand between quotes, and nowhere else. */
const faultsOfStyle = (text: string): readonly string[] => {
  const bare = text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/"(?:[^"\\\n]|\\[\s\S])*"/g, '""')
  return found('words of the input in a style', /zq|<\//i, bare)
}

function faultsOfScript(text: string): readonly string[] {
  try {
    new Script(text)
    return [
      ...found('words that end a script', /<\/script|<!--/i, text),
      ...found('a slip', /\bNaN\b|\[object /, text),
    ]
  } catch (error) {
    return [`a script that cannot be read: ${String(error)}`]
  }
}

function faultsOfTable(text: string): readonly string[] {
  const formula = csvParseRows(text.replace(/^\ufeff/, ''))
    .flat()
    .find((cell) => /^[=+\-@\t\r]/.test(cell) && !/^-\d+(?:\.\d+)?(?:e[-+]?\d+)?$/.test(cell))
  const slip = slipIn(text)
  return [
    ...(formula === undefined ? [] : [`a formula: ${formula.slice(0, 80)}`]),
    ...(slip === undefined ? [] : [`"${slip}" in a table`]),
  ]
}

/** Lines of a calendar begin with a name of RFC 5545, and what is begun is ended. */
function faultsOfCalendar(text: string): readonly string[] {
  const lines = text.replace(/\r\n[ \t]/g, '').split('\r\n')
  const odd = lines.find((line) => line !== '' && !/^[A-Z][A-Z-]*(?:;[^:]*)?:/.test(line))
  const own = lines.find((line) => /^ZQ/.test(line))
  const open: string[] = []
  for (const line of lines) {
    const [, what = ''] = /^(?:BEGIN|END):(.*)$/.exec(line) ?? []
    if (line.startsWith('BEGIN:')) open.push(what)
    else if (line.startsWith('END:') && open.pop() !== what)
      return [`ended without beginning: ${what}`]
  }
  const slip = slipIn(text)
  return [odd, own, open[0], slip].flatMap((what) =>
    what === undefined ? [] : [`in a calendar: ${what.slice(0, 100)}`],
  )
}

function faultsOfData(text: string): readonly string[] {
  try {
    JSON.parse(text)
  } catch (error) {
    return [`no JSON: ${String(error)}`]
  }
  const slip = slipIn(text)
  return slip === undefined ? [] : [`"${slip}" in data`]
}

const oddName = /^[/\\]|\.\.|[^\w./-]|(?:^|\/)(?:con|prn|aux|nul|com\d|lpt\d)(?:\.|$)/i

/** What is wrong with a text that was made from an input that may mean harm. */
export function faultsOfOutput(
  { path, text }: Output,
  allowed: readonly string[],
): readonly string[] {
  const name = oddName.test(path) ? ['a name that is none'] : []
  const said = path.endsWith('.html')
    ? faultsOfPage(text, allowed)
    : path.endsWith('.css')
      ? faultsOfStyle(text)
      : path.endsWith('.js')
        ? faultsOfScript(text)
        : path.endsWith('.csv')
          ? faultsOfTable(text)
          : path.endsWith('.ics')
            ? faultsOfCalendar(text)
            : path.endsWith('.json') || path.endsWith('.webmanifest')
              ? faultsOfData(text)
              : path.endsWith('.svg')
                ? faultsOfPage(text, allowed)
                : []
  return [...name, ...said].map((what) => `${path}: ${what}`)
}

/** Numbers of a value that are none, and slips in its texts, with the way to them. */
export function faultsOfValue(value: unknown, way = ''): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${way} is ${value}`]
  if (typeof value === 'string') {
    const slip = slipIn(value)
    return slip === undefined ? [] : [`${way} says "${slip}": ${value.slice(0, 120)}`]
  }
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => faultsOfValue(inner, `${way}.${key}`))
}
