import type { Problem } from '../../model/problem.ts'
import type { CsvCell } from '../../read/read-csv.ts'

/** The number at the start of a cell, and what stands behind it: a unit, mostly. */
const leading = /^([-+]?[$€£]?)(\d[\d.,]*)(.*)$/

type Mark = '.' | ','

/** What the number of a cell tells of the mark before its decimals: which, none, or two readings. */
export type Evidence = Mark | 'none' | 'either'

const other = (mark: Mark): Mark => (mark === '.' ? ',' : '.')

/** What one number tells: `1.25` a point, `1.250,5` a comma, `1,250` either, `12` nothing. */
export function evidenceOf({ text, kind }: Pick<CsvCell, 'text' | 'kind'>): Evidence {
  const number = kind === 'number' || kind === 'day' ? '' : (leading.exec(text)?.[2] ?? '')
  const marks = [...number.replace(/[.,]$/, '')].filter((c): c is Mark => c === '.' || c === ',')
  const [first] = marks
  const last = marks.at(-1)
  if (first === undefined || last === undefined) return 'none'
  if (first !== last) return last
  // A mark that stands more than once parts thousands.
  if (marks.length > 1) return other(first)
  const [whole = '', rest = ''] = number.split(first)
  return rest.length === 3 && whole.length <= 3 && !/^0/.test(whole) ? 'either' : first
}

/** The mark before decimals in some cells; `ask` where a number of two readings needs an answer. */
export type NumberStyle = {
  readonly mark: Mark
  /** Whether `1,250` or `1.250` cannot be read without asking. */
  readonly ask: boolean
  /**
   * Whether cells come from many hands, so that each number is read by itself where it can be; the
   * numbers of a table come from one, and one that goes against the others is a slip.
   */
  readonly apart?: boolean
}

/**
 * How the numbers of a table are written, by those that can be read in one way only.
 * @param usual The mark where the table comes from, if that is known.
 */
export function numberStyle(
  cells: readonly Pick<CsvCell, 'text' | 'kind'>[],
  usual: Mark | undefined,
): NumberStyle {
  const told = cells.map(evidenceOf)
  const [points, commas] = (['.', ','] as const).map((m) => told.filter((t) => t === m).length) as [
    number,
    number,
  ]
  if (points === 0 && commas === 0) return { mark: usual ?? '.', ask: usual === undefined }
  const mark = commas > points ? ',' : '.'
  // Where numbers go against what is usual, or against each other, those of two readings are asked.
  return { mark, ask: (usual !== undefined && usual !== mark) || (points > 0 && commas > 0) }
}

type Asked = Pick<Problem, 'code' | 'message'> & { readonly hint: string }

/** A cell with its number as the program writes it, `1,250.5`; or what has to be asked. */
export function withPoint(
  cell: Pick<CsvCell, 'text' | 'kind'>,
  style: NumberStyle,
): string | Asked {
  const { text } = cell
  const evidence = evidenceOf(cell)
  const [, sign = '', number = '', rest = ''] = leading.exec(text) ?? []
  if (evidence === 'none') return text
  if (evidence === 'either') {
    const [whole = '', part = ''] = number.split(/[.,]/)
    if (style.ask)
      return {
        code: 'quantity/number',
        message: `"${text}" can be ${whole}${part} or ${whole}.${part}`,
        hint: `write ${sign}${whole}${part}${rest}; or, where it is a little more than ${whole}, ${sign}${whole}${style.mark}${part}0${rest}`,
      }
  } else if (evidence !== style.mark && style.apart !== true)
    return {
      code: 'quantity/number',
      message: `"${text}" has a decimal ${evidence === ',' ? 'comma' : 'point'}, and most numbers here a decimal ${evidence === ',' ? 'point' : 'comma'}`,
      hint: 'write all numbers of the table in one way',
    }
  if ((evidence === 'either' ? style.mark : evidence) === '.') return text
  return `${sign}${number.replaceAll('.', '').replace(',', '.')}${rest}`
}
