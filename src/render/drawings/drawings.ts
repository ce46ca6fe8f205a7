import type { Manual } from '../../model/manual.ts'
import type { Words } from '../../validate/schemas/words.ts'
import { pullback } from './at-the-rail.ts'
import { countdown } from './charts/countdown.ts'
import { drying } from './charts/drying.ts'
import { heatIndex } from './charts/heat-index.ts'
import { levels } from './charts/levels.ts'
import { raceInterval } from './charts/race-interval.ts'
import { waterMonths } from './charts/water-months.ts'
import { depthMap } from './depth-map/depth-map.ts'
import { type Drawing, keepDrawing } from './drawing.ts'
import { grains } from './grains.ts'
import { plan } from './oval/plan.ts'
import { passPatterns } from './passes/passes.ts'
import { rolling } from './rolling/rolling.ts'
import { sections } from './sections/sections.ts'
import { cupTest } from './skills/cups.ts'
import { noRide } from './skills/no-ride.ts'
import { openSteps } from './skills/open-steps.ts'
import { overlap } from './skills/overlap.ts'
import { hoofPrints, hoofPrintsMixed } from './skills/prints/hoof-prints.ts'
import { pylonLine } from './skills/pylons.ts'
import { ridge } from './skills/ridge.ts'
import { hitchSignals } from './skills/signals.ts'
import { squaredEdge } from './skills/squared-edge.ts'
import { squeeze } from './skills/squeeze.ts'
import { straightedge } from './skills/straightedge.ts'
import { toothDepth } from './skills/teeth.ts'
import { washout } from './washout/washout.ts'

/** Every drawing there is, in the order of lists. */
export const allDrawings = [
  plan,
  countdown,
  levels,
  sections,
  washout,
  rolling,
  pullback,
  ridge,
  depthMap,
  grains,
  waterMonths,
  heatIndex,
  raceInterval,
  drying,
  ...passPatterns,
  hoofPrints,
  hoofPrintsMixed,
  squeeze,
  toothDepth,
  overlap,
  hitchSignals,
  openSteps,
  straightedge,
  squaredEdge,
  noRide,
  pylonLine,
  cupTest,
] as const

export type DrawingName = (typeof allDrawings)[number]['name']

/** Drawings by name, without those that a facility's numbers do not allow. */
export type Drawings = Readonly<Partial<Record<DrawingName, Drawing>>>

/** What was drawn so far, by name. */
type DrawnSoFar = Map<string, Drawing | undefined>

type Rendered = {
  readonly words: Words
  readonly drawings: Drawings
  readonly drawn: DrawnSoFar
}

const rendered = new WeakMap<Manual, Rendered>()

/** All drawings by name, each drawn when somebody first asks whether there is one. */
function drawnWhenAsked(manual: Manual, words: Words, drawn: DrawnSoFar): Drawings {
  const declared = new Map<string, (typeof allDrawings)[number]>(
    allDrawings.map((d) => [d.name, d]),
  )
  const drawing = (name: string | symbol): Drawing | undefined => {
    const spec = typeof name === 'string' ? declared.get(name) : undefined
    if (!spec) return undefined
    if (!drawn.has(spec.name)) drawn.set(spec.name, spec.render(manual, words))
    return drawn.get(spec.name)
  }
  return new Proxy<Drawings>(
    {},
    {
      get: (_, name) => drawing(name),
      has: (_, name) => drawing(name) !== undefined,
      ownKeys: () => [...declared.keys()].filter(drawing),
      getOwnPropertyDescriptor: (_, name) => {
        const value = drawing(name)
        return value && { value, enumerable: true, configurable: true }
      },
    },
  )
}

/** The drawings that this facility's numbers allow, drawn once for all that show them. */
export function renderDrawings(manual: Manual, words: Words): Drawings {
  const known = rendered.get(manual)
  if (known?.words === words) return known.drawings
  const drawn: DrawnSoFar = new Map()
  const drawings = drawnWhenAsked(manual, words, drawn)
  rendered.set(manual, { words, drawings, drawn })
  return drawings
}

/** Keeps the drawings of a manual for later commands, as far as they were drawn. */
export function keepDrawings(manual: Manual): void {
  for (const drawing of rendered.get(manual)?.drawn.values() ?? [])
    if (drawing) keepDrawing(drawing)
}

/** A drawing by the name that content gives it; names are checked when content is loaded. */
export const drawingNamed = (drawings: Drawings, name: string | undefined): Drawing | undefined =>
  name === undefined ? undefined : drawings[name as DrawingName]
