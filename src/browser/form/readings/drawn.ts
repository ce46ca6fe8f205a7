import { isQuantityId } from '../../../compute/uses/ids.ts'
import type { ReadingName } from '../../../edit/readings/table.ts'
import { drawLevels, wording as levelWording } from '../../../render/drawings/charts/levels.ts'
import { drawDepthMap } from '../../../render/drawings/depth-map/depth-map.ts'
import { wording as depthWording } from '../../../render/drawings/depth-map/words.ts'
import { screenSvg } from '../../../render/drawings/screen-svg.ts'
import type { DrawingSize } from '../../../render/drawings/sizes.ts'
import { classed } from '../../element.ts'
import type { Worked } from '../contract.ts'
import type { Sitting } from '../sitting.ts'

type Whole = Worked & {
  readonly manual: NonNullable<Worked['manual']>
  readonly computed: NonNullable<Worked['computed']>
}

/** What a drawing of readings is drawn from, as one text; empty where there is none. */
function dataOf({ manual }: Whole, name: ReadingName): string {
  const data = name === 'depth' ? manual.cushionMap : manual.charts.levels
  return data === undefined || (Array.isArray(data) && data.length === 0)
    ? ''
    : JSON.stringify(data)
}

function svgOf({ manual, computed, library }: Whole, name: ReadingName, alt: string) {
  const { engine } = computed
  const { labels } = library.words
  const given = {
    manual,
    alt,
    // A drawing of the whole manual asks for all of its quantities, which takes long.
    q: (id: string) => (isQuantityId(id) ? (engine.text(id) ?? '') : ''),
    si: (id: string) => (isQuantityId(id) ? engine.si(id) : undefined),
  }
  const depths = { ...given, words: depthWording.schema.parse(labels[depthWording.group]) }
  const levels = { ...given, words: levelWording.schema.parse(labels[levelWording.group]) }
  return (size: DrawingSize): string =>
    screenSvg(name === 'depth' ? drawDepthMap(depths, size) : drawLevels(levels, size))
}

/** The map of depths, or the sections of levels, drawn anew whenever they are others. */
export function drawnReadings(sitting: Sitting, name: ReadingName) {
  const { readings } = sitting.said.form.says
  const wide = classed('div', 'on-wide')
  const narrow = classed('div', 'on-narrow')
  const node = classed('figure', 'readings-drawn', wide, narrow)
  let key: string | undefined
  const refresh = (): void => {
    const { manual, computed, ...rest } = sitting.worked() ?? {}
    const whole = manual && computed ? ({ ...rest, manual, computed } as Whole) : undefined
    const data = whole ? dataOf(whole, name) : ''
    node.hidden = data === ''
    if (!whole || data === key) return
    key = data
    if (data === '') return
    const svg = svgOf(whole, name, readings.drawn)
    wide.innerHTML = svg('page')
    narrow.innerHTML = svg('column')
  }
  return { node, refresh, isDrawn: () => !node.hidden }
}
