/** A quantity in a form that is not read, with what to type instead. */
type Slip = { readonly message: string; readonly hint: string }

const decimalComma = /^([-+]?\d+),(\d{1,2}|\d{4,})(?=\D|$)(.*)$/
const end = String.raw`\d+[ -]\d+\/\d+|\d+\/\d+|\d+(?:[.,]\d+)*`
const range = new RegExp(
  String.raw`^(?:from |between )?(${end})\s*([^\d\s–—-]*)\s*(?:-|–|—|to|or|and|\.\.+)\s*(${end})(?![\d/])\s*(.*)$`,
)
/** `1-1/8` is one and an eighth, and no range. */
const mixedNumber = /^\d+-\d+\/\d+(?!\s*(?:-|–|—|to|or|and)\b)/
const spaced = /^(\d{1,3})[ \u00A0\u202F](\d{3})(?!\d)(.*)$/
const about =
  /^(?:about|around|roughly|approx(?:imately|\.)?|circa|ca\.?|c\.|~|≈|<|>|±|less than|more than|at least|up to|over|under)\s*(.+)$/i
/** What people write where they know nothing. */
export const saysNothing =
  /^(?:unknown|not known|unmeasured|not measured(?: yet)?|nobody knows|tbd|tba|to be decided|to follow|n\/?a|none|\?+|-+|x+)$/i
const curly = /^[“”„‘’«»](.*?)[“”„‘’«»]?$/

/** Parts of one in which a number is said, and how many of them it is. */
type Parts = { readonly of: number; readonly count: number }

/** `1 1/2` as 3 halves; what is written with decimals is no fraction. */
function partsOf(text: string): Parts | undefined {
  const [, whole = '0', over = '', under = ''] = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(text) ?? []
  if (over !== '') return { of: Number(under), count: Number(whole) * Number(under) + Number(over) }
  return /^\d+$/.test(text) ? { of: 1, count: Number(text) } : undefined
}

function fraction({ of, count }: Parts): string {
  const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b))
  const by = common(of, count % of)
  const [whole, over] = [Math.floor(count / of), (count % of) / by]
  if (over === 0) return String(whole)
  return `${whole === 0 ? '' : `${whole} `}${over}/${of / by}`
}

/** The middle of two numbers, as it is typed; nothing where there is none. */
function middle(a: string, b: string): string | undefined {
  const [low, high] = [partsOf(a), partsOf(b)]
  if (/\//.test(a + b)) {
    if (!low || !high || low.of === 0 || high.of === 0) return undefined
    return fraction({ of: 2 * low.of * high.of, count: low.count * high.of + high.count * low.of })
  }
  const sum = [a, b].reduce((total, text) => total + Number(text.replaceAll(',', '')), 0)
  return Number.isNaN(sum) ? undefined : String(Number((sum / 2).toPrecision(12)))
}

const sameUnit = (one: string, other: string): boolean =>
  one === '' || one.replace(/s?\.?$/, '') === other.replace(/s?\.?$/, '')

/** A value between two ends: one is asked for, and the middle offered. */
function between(text: string): Slip | undefined {
  const [, from = '', unit = '', to = '', of = ''] = range.exec(text) ?? []
  if (from === '' || of.startsWith('/') || mixedNumber.test(text)) return undefined
  const one = sameUnit(unit, of) ? middle(from, to) : undefined
  const such =
    one === undefined
      ? ''
      : `, such as ${`${one} ${of}`.trim().replace(/ (?=["'])/, '')}, the middle`
  return {
    message: `"${text}" is a range`,
    hint: `write one value${such}; what it varies between can stand behind #`,
  }
}

/** `80 x 120 x 6 ft`: what is measured in three directions holds so much. */
function size(text: string): Slip | undefined {
  const [, a = '', b = '', c = '', unit = ''] =
    /^(\d[\d,.]*)\s*[a-z'"]*\s*[x×*]\s*(\d[\d,.]*)\s*[a-z'"]*\s*(?:[x×*]\s*(\d[\d,.]*)\s*)?([a-z'"]+)$/i.exec(
      text,
    ) ?? []
  if (a === '') return undefined
  const message = `"${text}" is measured in ${c === '' ? 'two' : 'three'} directions`
  const product = [a, b, c].reduce((p, n) => p * Number(n.replaceAll(',', '')), 1)
  const names: Readonly<Record<string, string>> = { "'": 'ft', '"': 'in', feet: 'ft', foot: 'ft' }
  if (c === '' || Number.isNaN(product) || unit.length > 6)
    return { message, hint: 'write the one number that is asked for' }
  const [whole = '', rest] = String(Number(product.toPrecision(12))).split('.')
  const thousands = whole.replace(/\B(?=(\d{3})+$)/g, ',')
  return {
    message,
    hint: `write what it holds: ${thousands}${rest === undefined ? '' : `.${rest}`} ${names[unit] ?? unit}3`,
  }
}

/** How a quantity was meant that cannot be read as it is written; nothing where nobody can tell. */
export function slipOf(written: string): Slip | undefined {
  const text = written.trim()
  if (saysNothing.test(text))
    return {
      message: `"${text}" is no value`,
      hint: 'delete the line: a usual value stands in, and the manual says that nobody has measured it',
    }
  const [, quoted] = curly.exec(text) ?? []
  if (quoted !== undefined)
    return {
      message: 'there are curly quotes round this',
      hint: `leave them out, or type straight ones: "${quoted.trim()}"`,
    }
  const [, whole = '', part = '', unit = ''] = decimalComma.exec(text) ?? []
  if (whole !== '')
    return {
      message: `"${text}" has a comma where a point belongs`,
      hint: `write ${whole}.${part}${unit}; a comma parts thousands, as in 2,640 ft`,
    }
  const range = between(text) ?? size(text)
  if (range) return range
  const [, amount = '', behind = ''] = /^([\d.,]+)\s*\+\s*(.*)$/.exec(text) ?? []
  if (amount !== '' && !/^\d/.test(behind))
    return {
      message: `"${text}" does not say how much more`,
      hint: `write ${`${amount} ${behind}`.trim()}${behind === '' ? ' with its unit' : ''}; that it is more can stand behind #`,
    }
  const [, thousands = '', rest = '', then = ''] = spaced.exec(text) ?? []
  if (thousands !== '')
    return {
      message: `there is a space inside the number of "${text}"`,
      hint: `write ${thousands},${rest}${then}`,
    }
  const [, exact] = about.exec(text) ?? []
  if (exact !== undefined)
    return {
      message: `"${text}" does not begin with a number`,
      hint: `write ${exact} alone; that it is not exact can stand behind #`,
    }
  const money = /^\d[\d.,]*\s*\/\s*[a-z]/i.test(text)
  if (money)
    return {
      message: `"${text}" does not say of what there is so much`,
      hint: `write $${text}; the sign of the money stands first, or a unit behind the number`,
    }
  return undefined
}
