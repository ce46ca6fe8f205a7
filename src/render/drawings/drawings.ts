import type { DrawingName } from '../../model/drawing-names.ts'
import type { Manual } from '../../model/manual.ts'
import type { Words } from '../../validate/schemas/words.ts'
import { plainWords } from '../text/render-text.ts'
import { pullbackDrawing, ridgeDrawing } from './at-the-rail.ts'
import { countdownDetails, countdownDrawing } from './charts/countdown.ts'
import { dryingDetails, dryingDrawing } from './charts/drying.ts'
import { heatIndexDetails, heatIndexDrawing } from './charts/heat-index.ts'
import { levelsDetails, levelsDrawing } from './charts/levels.ts'
import { raceIntervalDetails, raceIntervalDrawing } from './charts/race-interval.ts'
import { waterMonthsDetails, waterMonthsDrawing } from './charts/water-months.ts'
import { cushionDrawing } from './cushion.ts'
import type { Drawing } from './drawing.ts'
import type { DrawingContext } from './drawing-context.ts'
import { grainsDrawing } from './grains.ts'
import { passesDetails, passesDrawing } from './passes.ts'
import { planDetails, planDrawing } from './plan.ts'
import { sectionDrawing } from './section.ts'
import { rollingDrawing, waterPassDrawing } from './strips.ts'
import { washoutDrawing } from './washout.ts'

const makers: Readonly<Record<DrawingName, (c: DrawingContext) => string>> = {
  plan: planDrawing('page'),
  'plan-small': planDrawing('small'),
  countdown: countdownDrawing,
  levels: levelsDrawing,
  'section-straight': (c) => sectionDrawing('straights', c),
  'section-turn': (c) => sectionDrawing('turns', c),
  washout: washoutDrawing,
  rolling: rollingDrawing,
  pullback: pullbackDrawing,
  ridge: ridgeDrawing,
  'water-pass': waterPassDrawing,
  cushion: cushionDrawing,
  grains: grainsDrawing,
  'water-months': waterMonthsDrawing,
  'heat-index': heatIndexDrawing,
  'race-interval': raceIntervalDrawing,
  drying: dryingDrawing,
  'passes-grade': passesDrawing('grade'),
  'passes-harrow': passesDrawing('harrow'),
  'passes-screen': passesDrawing('screen'),
  'passes-drum': passesDrawing('drum'),
  'passes-condition': passesDrawing('condition'),
  'passes-water': passesDrawing('spray'),
}

/** Numbers of a chart in words, which its text alternative adds to the caption. */
const details: Readonly<Record<string, (c: DrawingContext) => string>> = {
  countdown: countdownDetails,
  levels: levelsDetails,
  plan: planDetails,
  'water-months': waterMonthsDetails,
  'heat-index': heatIndexDetails,
  'race-interval': raceIntervalDetails,
  drying: dryingDetails,
  'passes-grade': passesDetails('grade'),
  'passes-harrow': passesDetails('harrow'),
  'passes-screen': passesDetails('screen'),
  'passes-drum': passesDetails('drum'),
  'passes-condition': passesDetails('condition'),
  'passes-water': passesDetails('spray'),
}

/** Drawings that say nothing without this quantity. */
const needs: Readonly<Record<string, string>> = {
  rolling: 'roll.move',
  'water-pass': 'gear.spray.spray-width',
  cushion: 'depths.mean',
  grains: 'sieve.share',
}

/** Drawings that are made to be read across a page. */
const wide: ReadonlySet<string> = new Set([
  'plan',
  'countdown',
  'levels',
  'cushion',
  'grains',
  'water-months',
  'race-interval',
])

/** All drawings that this facility's numbers allow, by id. */
export function renderDrawings(manual: Manual, words: Words): Readonly<Record<string, Drawing>> {
  const q = (name: string): string => {
    const found = manual.quantities[name]
    return found?.ok ? found.text : ''
  }
  const made = (Object.entries(makers) as [DrawingName, (c: DrawingContext) => string][])
    .filter(([id]) => needs[id] === undefined || q(needs[id]) !== '')
    .map(([id, make]): [string, Drawing] => {
      const caption = plainWords(words.captions[id], manual.quantities)
      const context = { manual, words: words.drawings, q, caption }
      const alt = [caption, details[id]?.(context) ?? ''].filter((part) => part !== '').join(' ')
      return [
        id,
        {
          title: words.drawingTitles[id],
          svg: make({ ...context, caption: alt }),
          alt,
          caption,
          small: !wide.has(id),
        },
      ]
    })
    .filter(([, { svg }]) => svg !== '')
  return Object.fromEntries(made)
}
