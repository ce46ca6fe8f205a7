import type { SurveyDay, SurveyedOval } from '../../model/survey.ts'
import { calculation } from '../calculation.ts'
import { depthTargetInput, workedWeightInput } from '../cushion/cushion-inputs.ts'
import {
  radiusInput,
  straightInput,
  widthStraightsInput,
  widthTurnsInput,
} from '../oval/oval-inputs.ts'
import { aroundRail, widthAt } from './along.ts'
import { ringVolume } from './ring-volumes.ts'
import { sectionParts } from './station-section.ts'
import { surveyCells } from './survey-cells.ts'
import { balanceSteps, endAreaSteps } from './survey-steps.ts'

/** Sections above and below the wanted depth, one a station. */
const depthSections = (day: SurveyDay, oval: SurveyedOval, target: number) =>
  aroundRail(day.readings, oval).map(({ station, readings }) => ({
    station,
    ...sectionParts(readings, () => target, widthAt(oval, station)),
  }))

/**
 * Volumes above and below the wanted depth by average end areas: the second way, as a check on the
 * first.
 */
function byEndAreas(
  day: SurveyDay,
  oval: SurveyedOval,
  target: number,
): { over: number; short: number } {
  const sections = depthSections(day, oval, target)
  return {
    over: ringVolume(
      sections.map((s) => ({ station: s.station, area: s.over })),
      oval,
    ),
    short: ringVolume(
      sections.map((s) => ({ station: s.station, area: s.short })),
      oval,
    ),
  }
}

/** What sums over readings rest on, beside the readings. */
const depthsAndOval = ['target', 'straight', 'radius', 'widthStraights', 'widthTurns']

/**
 * Material above and below the wanted depth, from the survey of one day, worked two ways.
 * @param day A survey of cushion depth.
 */
export const depthBalance = (day: SurveyDay) =>
  calculation({
    id: 'depth-balance',
    sources: ['navedtra-14080', 'geometry'],
    inputs: {
      target: depthTargetInput,
      unitWeight: workedWeightInput,
      straight: straightInput,
      radius: radiusInput,
      widthStraights: widthStraightsInput,
      widthTurns: widthTurnsInput,
    },
    outputs: {
      over: {
        symbol: 'V_+',
        kind: 'fillVolume',
        tex: '\\textstyle\\sum_i A_i \\max(d_i - @target,\\,0)',
        restsOn: depthsAndOval,
      },
      short: {
        symbol: 'V_-',
        kind: 'fillVolume',
        tex: '\\textstyle\\sum_i A_i \\max(@target - d_i,\\,0)',
        restsOn: depthsAndOval,
      },
      move: { symbol: 'M', kind: 'mass', tex: '\\min(@over,\\,@short)\\,@unitWeight' },
      spare: { symbol: 'M_+', kind: 'mass', tex: '\\max(@over - @short,\\,0)\\,@unitWeight' },
      missing: { symbol: 'M_-', kind: 'mass', tex: '\\max(@short - @over,\\,0)\\,@unitWeight' },
      overByEnds: {
        symbol: "V_+'",
        kind: 'fillVolume',
        tex: '\\textstyle\\sum_k \\tfrac12 (F_k + F_{k+1})\\,L_k',
        restsOn: depthsAndOval,
      },
      shortByEnds: {
        symbol: "V_-'",
        kind: 'fillVolume',
        tex: "\\textstyle\\sum_k \\tfrac12 (F'_k + F'_{k+1})\\,L_k",
        restsOn: depthsAndOval,
      },
    },
    steps: {
      readings: ({ target, ...oval }) => balanceSteps(day, target, oval),
      sections: ({ target, ...oval }) =>
        endAreaSteps(
          depthSections(day, oval, target).map(({ station, over, short }) => ({
            station,
            areas: [over, short],
          })),
          ['F', "F'"],
          oval,
        ),
    },
    compute: ({ target, unitWeight, ...oval }) => {
      const cells = surveyCells(day.readings, oval)
      const over = cells.reduce((sum, c) => sum + c.area * Math.max(c.value - target, 0), 0)
      const short = cells.reduce((sum, c) => sum + c.area * Math.max(target - c.value, 0), 0)
      const ends = byEndAreas(day, oval, target)
      return {
        over,
        short,
        move: Math.min(over, short) * unitWeight,
        spare: Math.max(over - short, 0) * unitWeight,
        missing: Math.max(short - over, 0) * unitWeight,
        overByEnds: ends.over,
        shortByEnds: ends.short,
      }
    },
  })
