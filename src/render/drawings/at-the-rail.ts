import { entries } from '../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from './drawing.ts'
import { arrow, dashed, hatch, line, path, stipple, svg, text } from './svg.ts'

const wording = labels('at-the-rail', entries('rail', 'outside', 'lump', 'up', 'thin'))
type Context = ContextFor<typeof wording>

const width = 400
const left = 44
const right = 384
const y0 = 158
const rise = 62
const yAt = (x: number): number => y0 - (rise * (x - left)) / (right - left)
const size = 18.6

const ground = ({ words }: Context): string =>
  [
    line([left, y0], [right, y0 - rise], 'line'),
    hatch([left, y0], [right, y0 - rise]),
    line([left, y0 + 4], [left - 8, y0 - 46], 'bold'),
    text([left - 16, y0 - 54], words.rail, 'middle', size),
    text([right, y0 - rise - 12], words.outside, 'end', size),
  ].join('')

function drawPullback(context: Context): string {
  const { words, q, alt } = context
  const volume = q('creep.volume')
  return svg(
    width,
    232,
    alt,
    [
      ground(context),
      path(`M${left + 3} ${y0}q14 -34 42 -8`, 'line'),
      stipple(left + 10, left + 42, (x) => yAt(x) - 13, 11, 6),
      line([left + 24, y0 + 26], [left + 24, y0 - 8], 'thin'),
      text([left + 12, y0 + 44], words.lump, 'start', size),
      ...(volume === '' ? [] : [text([left + 12, y0 + 63], volume, 'start', size)]),
      ...[0, 1].map((i) =>
        arrow(
          [left + 66 + i * 74, yAt(left + 66 + i * 74) - 20],
          [left + 126 + i * 74, yAt(left + 126 + i * 74) - 20],
          'line',
        ),
      ),
      text([left + 60, 62], words.up, 'start', size),
      line([left + 214, yAt(left + 214) - 5], [right - 4, yAt(right - 4) - 5], 'thin', dashed),
      stipple(left + 214, right - 4, (x) => yAt(x) - 7, 6, 10),
      line([right - 46, yAt(right - 46) + 40], [right - 46, yAt(right - 46)], 'thin'),
      text([right - 4, yAt(right - 46) + 58], words.thin, 'end', size),
    ].join(''),
  )
}

/** Words with a number where it is known. */
const told = (said: string, number: string): string => (number === '' ? said : `${said}: ${number}`)

/** The heap at the rail, carried up the slope by the blade and spread thin. */
export const pullback = declareDrawing({
  name: 'pullback',
  labels: wording,
  draw: drawPullback,
  numbers: ({ words, q }) => [told(words.lump, q('creep.volume')), words.up, words.thin].join('; '),
})
