import { entries } from '../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from './drawing.ts'
import { arrow, dashed, dimension, hatch, line, path, stipple, svg, text } from './svg.ts'

const wording = labels(
  'at-the-rail',
  entries('rail', 'outside', 'lump', 'up', 'thin', 'ridge', 'water'),
)
type Context = ContextFor<typeof wording>

const width = 400
const left = 44
const right = 384
const y0 = 158
const rise = 62
const yAt = (x: number): number => y0 - (rise * (x - left)) / (right - left)
const size = 17

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
    224,
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

function drawRidge(context: Context): string {
  const { words, q, alt } = context
  const top = y0 - 30
  const reach = left + ((y0 - top) / rise) * (right - left)
  const height = q('ridge.taken')
  const waterAt = (left + 22 + reach) / 2
  return svg(
    width,
    226,
    alt,
    [
      ground(context),
      path(
        `M${left} ${y0}L${left + 5} ${top}Q${left + 14} ${top - 4} ${left + 22} ${top + 12}L${left + 34} ${yAt(left + 34)}`,
        'bold',
      ),
      line([left + 12, top - 2], [left + 34, 44], 'thin'),
      text([left + 22, 36], `${words.ridge} ${height}`, 'start', size),
      path(`M${left + 17} ${top + 3}H${reach}`, 'line'),
      ...[0, 1, 2].map((i) => path(`M${left + 44 + i * 34} ${top + 9}h20`, 'thin')),
      line([waterAt, top + 6], [waterAt + 14, 76], 'thin'),
      text([waterAt - 6, 68], words.water, 'start', size),
      dimension([left, y0 + 34], [reach, y0 + 34]),
      line([reach, top], [reach, y0 + 38], 'thin', dashed),
      text([(left + reach) / 2, y0 + 54], q('ridge.dam-width'), 'middle', size),
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

/** Water that stands behind a ridge, level with its top. */
export const ridge = declareDrawing({
  name: 'ridge',
  labels: wording,
  draw: drawRidge,
  numbers: ({ words, q }) =>
    [told(words.ridge, q('ridge.taken')), told(words.water, q('ridge.dam-width'))].join('; '),
})
