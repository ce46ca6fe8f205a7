/** A quantity in a form that is not read, with what to type instead. */
type Slip = { readonly message: string; readonly hint: string }

const words: Readonly<Record<string, string>> = {
  a: '1',
  an: '1',
  one: '1',
  two: '2',
  three: '3',
  four: '4',
  five: '5',
  six: '6',
  seven: '7',
  eight: '8',
  nine: '9',
  ten: '10',
  eleven: '11',
  twelve: '12',
  fifteen: '15',
  twenty: '20',
  thirty: '30',
  half: '1/2',
  'half a': '1/2',
  'half an': '1/2',
  'a half': '1/2',
  'one half': '1/2',
  quarter: '1/4',
  'a quarter': '1/4',
  'quarter of a': '1/4',
  'a quarter of a': '1/4',
  'three quarters of a': '3/4',
  'three quarter': '3/4',
}

const number = String.raw`\d+(?:[.,]\d+)*`
const decimalComma = /^([-+]?\d+),(\d{1,2}|\d{4,})(?=\D|$)(.*)$/
const range = new RegExp(
  String.raw`^(${number})\s*[^\d\s]*\s*(?:-|–|—|to|\.\.+)\s*(${number})\s*(.*)$`,
)
const spaced = /^(\d{1,3})[ \u00A0\u202F](\d{3})(?!\d)(.*)$/
const about =
  /^(?:about|around|roughly|approx(?:imately|\.)?|circa|ca\.?|c\.|~|≈|<|>|±|less than|more than|at least|up to|over|under)\s*(.+)$/i
const unknown = /^(?:unknown|not known|unmeasured|not measured(?: yet)?|tbd|n\/?a|none|\?+|-+|x+)$/i
const curly = /^[“”„‘’«»](.*?)[“”„‘’«»]?$/

const value = (text: string): number => Number(text.replaceAll(',', ''))

/** The middle of two numbers, as it is typed. */
const middle = (a: string, b: string): string => String((value(a) + value(b)) / 2)

/** A quantity whose number is said in words, in digits: `half a mile` is `1/2 mile`. */
export function inDigits(text: string): string | undefined {
  const lower = text.toLowerCase()
  const found = Object.keys(words)
    .filter((word) => lower.startsWith(`${word} `) || lower.startsWith(`${word}-`))
    .sort((a, b) => b.length - a.length)[0]
  return found === undefined ? undefined : `${words[found]} ${text.slice(found.length + 1).trim()}`
}

function inWords(text: string): Slip | undefined {
  const digits = inDigits(text)
  return digits === undefined
    ? undefined
    : { message: `"${text}" is in words`, hint: `write it in digits: ${digits}` }
}

/** How a quantity was meant that cannot be read as it is written; nothing where nobody can tell. */
export function slipOf(written: string): Slip | undefined {
  const text = written.trim()
  if (unknown.test(text))
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
  const [, from = '', to = '', of = ''] = range.exec(text) ?? []
  if (from !== '' && !of.startsWith('/'))
    return {
      message: `"${text}" is a range`,
      hint: `write one value, such as ${middle(from, to)} ${of}; what it varies between can stand behind #`.replace(
        / +;/,
        ';',
      ),
    }
  const [, thousands = '', rest = '', then = ''] = spaced.exec(text) ?? []
  if (thousands !== '')
    return {
      message: `there is a space inside the number of "${text}"`,
      hint: `write ${thousands},${rest}${then}`,
    }
  const [, amount] = about.exec(text) ?? []
  if (amount !== undefined)
    return {
      message: `"${text}" does not begin with a number`,
      hint: `write ${amount} alone; that it is not exact can stand behind #`,
    }
  return inWords(text)
}
