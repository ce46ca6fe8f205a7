import { type FigureId, isFigureId } from '../../../compute/uses/ids.ts'
import { useIdOf } from '../../../compute/uses/use.ts'
import { type Early, earlyStart } from './early.ts'
import type { Shown } from './worked.ts'

/** A number that tells what the answers mean. */
export type Telling = {
  readonly figure: string
  readonly label: string
  /** Number and unit as they are set large. */
  readonly number: string
  readonly unit: string
  /** Whether it rests on a usual value, or on something that stands in. */
  readonly estimate: boolean
  /** Of the start of work that comes very early: why. */
  readonly early: Early | undefined
}

/** So many are shown at most. */
const most = 10

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** A figure of the manual, where it has a number here. */
function numberOf(id: FigureId, label: string | undefined, shown: Shown): readonly Telling[] {
  const { computed, standIns } = shown
  const { engine } = computed
  const figure = engine.figure(id)
  if (!figure?.value.ok) return []
  const rests: ReadonlySet<string> = engine.restsOn(id)
  return [
    {
      figure: id,
      label: label ?? sentence(figure.label),
      number: figure.value.number,
      unit: figure.value.unit,
      early: id === 'clock.start' ? earlyStart(shown) : undefined,
      estimate: figure.estimate || standIns.some((path) => rests.has(path)),
    },
  ]
}

const lengths = ['shape.lap', 'shape.straight', 'shape.radius', 'outside.length'] as const

/** The lengths of the oval, those too that follow from the others. */
export const ovalLengths = (shown: Shown): readonly Telling[] =>
  lengths.flatMap((id) => numberOf(id, undefined, shown))

/** The most telling numbers that there are here, in the order of the words. */
export const tellingNumbers = (shown: Shown): readonly Telling[] =>
  shown.library.words.live.telling
    .flatMap(({ figure: id, label }) => {
      if (!isFigureId(id)) return []
      const title = shown.computed.engine.worksheet(useIdOf(id))?.title
      return numberOf(id, label ?? title, shown)
    })
    .slice(0, most)
