import { betweenRaces } from '../racing/between-races.ts'
import { fact, figure, type Use, use } from '../use.ts'

/** What fits between races with the harrow at hand. */
export const racingUses = (known: ReadonlySet<string>): readonly Use[] =>
  known.has('gear.harrow.width')
    ? [use(68, 'between', betweenRaces, { interval: fact('race-days.interval'), clear: fact('practice.clear-track'), whole: figure('harrow.time'), laps: figure('harrow.laps'), gain: figure('harrow.effective') })]
    : []
