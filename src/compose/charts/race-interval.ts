import type { Engine } from '../../compute/engine/engine.ts'
import type { RaceInterval } from '../../model/manual/charts.ts'
import type { ComposeContext } from '../context.ts'

/**
 * Water behind the harrow's first lap, or in its place where that leaves no time; undefined where
 * neither fits.
 */
function waterOf(engine: Engine, clear: number, lap: number): RaceInterval['water'] {
  const laps = engine.si('gap.laps') ?? 0
  const behind = laps > 0 ? (engine.si('gap.water-laps') ?? 0) : 0
  const alone = engine.si('gap.water-alone') ?? 0
  if (behind > 0)
    return {
      figure: 'gap.water-laps',
      laps: behind,
      from: clear + lap,
      to: engine.si('gap.watered') ?? 0,
      instead: false,
    }
  // In place of the harrow only where the harrow has no lap either: prints come first.
  return alone > 0 && laps === 0
    ? {
        figure: 'gap.water-alone',
        laps: alone,
        from: clear,
        to: clear + alone * (engine.si('gap.water-lap') ?? 0),
        instead: true,
      }
    : undefined
}

/**
 * The minutes between two races; undefined where nothing here harrows, or the interval leaves no
 * time.
 */
export function composeRaceInterval({ engine }: ComposeContext): RaceInterval | undefined {
  const times = engine.siOfAll({
    interval: 'race-days.interval',
    clear: 'gap.clear',
    lap: 'between.lap',
    laps: 'gap.laps',
    harrowed: 'gap.harrowed',
    off: 'gap.off',
    open: 'gap.open',
  })
  return times && { ...times, water: waterOf(engine, times.clear, times.lap) }
}
