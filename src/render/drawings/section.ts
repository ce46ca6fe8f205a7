import { fill } from '../../model/pattern.ts'
import { entries, holding } from '../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from './drawing.ts'
import { dashed, dimension, hatch, line, type Point, polyline, stipple, svg, text } from './svg.ts'

const wording = labels('section', {
  ...entries('rail', 'cushion', 'base', 'crossFall', 'foundSlope', 'heights'),
  raised: holding('height'),
  width: holding('width'),
})
type Context = ContextFor<typeof wording>

/** The part of the oval that is cut. */
type Where = 'straights' | 'turns'

const left = 34
const right = 352
const size = 17

/** Thickness of the layers as drawn; in truth they are far thinner against the width. */
const [cushion, base] = [11, 20]

/**
 * The surface as drawn: it runs from `y0` at the rail up by `rise` pixels to the outside edge,
 * heights drawn larger by a whole factor.
 */
type Surface = { readonly y0: number; readonly rise: number; readonly factor: number }

function surfaceOf(width: number, fall: number): Surface {
  const natural = width * fall * ((right - left) / width)
  const factor = Math.max(1, Math.min(8, Math.round(54 / natural)))
  return { y0: 82 + natural * factor, rise: natural * factor, factor }
}

const yAt = ({ y0, rise }: Surface, x: number): number => y0 - (rise * (x - left)) / (right - left)

/** Surface, cushion and base, with the hatching of the ground below. */
function layers(surface: Surface): string {
  const a: Point = [left, surface.y0]
  const b: Point = [right, surface.y0 - surface.rise]
  const down = (p: Point, d: number): Point => [p[0], p[1] + d]
  return [
    polyline([a, b], 'bold'),
    polyline([down(a, cushion), down(b, cushion)], 'line'),
    stipple(left, right, (x) => yAt(surface, x), cushion),
    polyline([down(a, cushion + base), down(b, cushion + base)], 'thin'),
    hatch(down(a, cushion + base), down(b, cushion + base)),
    line(a, [right + 24, surface.y0], 'thin', dashed),
  ].join('')
}

/** How much higher the outside edge lies than the rail. */
function riseMark({ y0, rise }: Surface, where: Where, { words, q }: Context): string {
  const raised = fill(words.raised, { height: q(`rise.${where}`) })
  return [
    dimension([right + 16, y0], [right + 16, y0 - rise]),
    line([right, y0 - rise], [right + 24, y0 - rise], 'thin'),
    text([right + 44, y0 - rise - 14], raised, 'end', size),
  ].join('')
}

/** Words that run along the surface. */
function along(surface: Surface, x: number, dy: number, words: string): string {
  const tilt = (-Math.atan2(surface.rise, right - left) * 180) / Math.PI
  const round = (value: number): number => Math.round(value * 100) / 100
  const y = yAt(surface, x) + dy
  return text([x, y], words, 'middle', size, `transform="rotate(${round(tilt)} ${x} ${round(y)})"`)
}

function drawSection(where: Where, context: Context): string {
  const { manual, words, q, alt } = context
  const g = manual.geometry
  const surface =
    where === 'straights'
      ? surfaceOf(g.widthStraights, g.crossFallStraights)
      : surfaceOf(g.widthTurns, g.crossFallTurns)
  const { y0, factor } = surface
  const found = q(`levels.${where}`)
  const depth = q('base.depth')
  const basePlace = right - 62
  const baseTop = yAt(surface, basePlace) + cushion + base / 2
  const width = fill(words.width, { width: q(`oval.width.${where}`) })
  return svg(
    400,
    y0 + 142,
    alt,
    [
      layers(surface),
      riseMark(surface, where, context),
      line([left, y0 + 4], [left - 7, y0 - 40], 'bold'),
      text([left - 14, y0 - 48], words.rail, 'middle', size),
      along(surface, left + 120, -12, `${words.cushion} ${q('cushion.depth.target')}`),
      line([basePlace, baseTop], [basePlace, y0 + 48], 'thin'),
      text([basePlace, y0 + 64], [words.base, depth].join(' ').trim(), 'middle', size),
      text([left, y0 + 64], `${words.crossFall} ${q(`oval.cross-fall.${where}`)}`, 'start', size),
      found === '' ? '' : text([left, y0 + 84], `${words.foundSlope} ${found}`, 'start', size),
      dimension([left, y0 + 98], [right, y0 + 98]),
      text([(left + right) / 2, y0 + 117], width, 'middle', size),
      text([right + 44, y0 + 137], `${words.heights} ${factor}`, 'end', 15),
    ].join(''),
  )
}

/** Measures of a section, from the rail outward and from the top down. */
const numbers = (where: Where, { words, q }: Context): string =>
  [
    fill(words.width, { width: q(`oval.width.${where}`) }),
    `${words.crossFall} ${q(`oval.cross-fall.${where}`)}`,
    fill(words.raised, { height: q(`rise.${where}`) }),
    ...(q(`levels.${where}`) === '' ? [] : [`${words.foundSlope} ${q(`levels.${where}`)}`]),
    `${words.cushion} ${q('cushion.depth.target')}`,
    [words.base, q('base.depth')].join(' ').trim(),
  ].join('; ')

/**
 * Cross-section of the straight as wanted, with its layers; where levels were taken, with the
 * cross-fall found.
 */
export const sectionStraight = declareDrawing({
  name: 'section-straight',
  labels: wording,
  draw: (context) => drawSection('straights', context),
  numbers: (context) => numbers('straights', context),
})

/** The same of the turn. */
export const sectionTurn = declareDrawing({
  name: 'section-turn',
  labels: wording,
  draw: (context) => drawSection('turns', context),
  numbers: (context) => numbers('turns', context),
})
