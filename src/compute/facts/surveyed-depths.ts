import { type FactPath, factSpec } from '../../model/fact-spec.ts'
import { radiusFrom, straightFrom } from '../../model/oval-shape.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import type { Reading, SurveyedOval } from '../../model/survey.ts'
import { usualValue } from '../../model/usual-value.ts'
import type { Survey } from '../../validate/imports/survey-table.ts'
import { surveyCells } from '../survey/survey-cells.ts'
import type { KnownValue, KnownValues } from './known.ts'

/**
 * What the file says of a length of the oval, else what is usual, whatever the cushion is made of;
 * NaN where neither is known.
 */
function lengthOf(path: FactPath, known: KnownValues, system: UnitSystem): number {
  const usual = factSpec(path)?.typical('stone-dust')
  return known.get(path)?.si ?? (usual ? usualValue(usual, system) : Number.NaN)
}

/** The oval as far as the file tells its shape; undefined where it does not. */
function ovalOf(known: KnownValues, system: UnitSystem): SurveyedOval | undefined {
  const length = (path: FactPath): number => lengthOf(path, known, system)
  const [lap, out] = [length('oval.lap'), length('oval.measuring-offset')]
  const [straight, radius] = [known.get('oval.straight')?.si, known.get('oval.radius')?.si]
  const oval = {
    straight: straight ?? straightFrom(lap, radius ?? Number.NaN, out),
    radius: radius ?? radiusFrom(lap, straight ?? Number.NaN, out),
    widthStraights: length('oval.width.straights'),
    widthTurns: length('oval.width.turns'),
  }
  return Object.values(oval).every((x) => x > 0) ? oval : undefined
}

/** Each reading counts by the ground that it stands for; all alike where that cannot be told. */
function meanDepth(readings: readonly Reading[], oval: SurveyedOval | undefined): number {
  const stations = new Set(readings.map((r) => r.station)).size
  const cells = oval && stations > 1 ? surveyCells(readings, oval) : []
  const area = cells.reduce((sum, c) => sum + c.area, 0)
  return area > 0
    ? cells.reduce((sum, c) => sum + c.area * c.value, 0) / area
    : readings.reduce((sum, r) => sum + r.value, 0) / readings.length
}

/** The mean of each depth survey, by its day: a measurement of the depth found. */
export function surveyedDepths(
  surveys: readonly Survey[],
  known: KnownValues,
  system: UnitSystem,
): readonly KnownValue[] {
  const oval = ovalOf(known, system)
  return surveys
    .filter((s) => s.of === 'cushion-depth')
    .flatMap(({ days, by, at }) =>
      days.map(({ date, readings }) => ({
        si: meanDepth(readings, oval),
        provenance: { kind: 'measured' as const, at, date, by },
      })),
    )
}
