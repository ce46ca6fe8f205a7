import { entries } from '../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from './drawing.ts'
import { arrow, dashed, dimension, line, svg, text } from './svg.ts'

const wording = labels('strips', entries('lapNumber', 'rail', 'outside', 'bar', 'overlap'))
type Context = ContextFor<typeof wording>

const size = 17

function drawWaterPass({ words, q, alt }: Context): string {
  const pass = (i: number): string => {
    const y = 42 + i * 46
    return `<rect x="14" y="${y}" width="220" height="58" fill="currentColor" fill-opacity="0.06" stroke="currentColor" stroke-width="1.2" ${dashed}/>${arrow([130, y + 29], [190, y + 29], 'line')}${text([24, y + 35], `${words.lapNumber} ${i + 1}`, 'start', size)}`
  }
  return svg(
    400,
    236,
    alt,
    [
      line([6, 32], [394, 32], 'line'),
      text([14, 24], words.outside, 'start', size),
      ...[0, 1, 2].map(pass),
      line([6, 206], [394, 206], 'bold'),
      text([14, 227], words.rail, 'start', size),
      dimension([248, 42], [248, 100]),
      text([258, 76], `${words.bar} ${q('gear.spray.spray-width')}`, 'start', size),
      line([240, 134], [252, 134], 'thin'),
      line([240, 146], [252, 146], 'thin'),
      text([258, 146], `${words.overlap} ${q('gear.spray.overlap')}`, 'start', size),
      arrow([386, 88], [386, 190], 'line'),
    ].join(''),
  )
}

/** Passes of the spray bar beside each other, from the outside toward the rail. */
export const waterPass = declareDrawing({
  name: 'water-pass',
  labels: wording,
  needs: 'gear.spray.spray-width',
  draw: drawWaterPass,
  numbers: ({ words, q }) =>
    `${words.bar} ${q('gear.spray.spray-width')}; ${words.overlap} ${q('gear.spray.overlap')}`,
})
