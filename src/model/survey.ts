/** What a survey file can hold. */
export const surveyKinds = ['cushion-depth', 'surface-level'] as const
export type SurveyKind = (typeof surveyKinds)[number]

/** The tables in which readings are typed, by what was read. */
export const surveyFiles = {
  'cushion-depth': 'depths.csv',
  'surface-level': 'levels.csv',
} as const satisfies Readonly<Record<SurveyKind, string>>

/** One reading; meters. The offset is measured from the rail toward the outside. */
export type Reading = { readonly station: number; readonly offset: number; readonly value: number }

/** The readings of one day, in the order of the stations and, within one, from the rail outward. */
export type SurveyDay = { readonly date: string; readonly readings: readonly Reading[] }

/** The oval as a survey needs it; meters. */
export type SurveyedOval = {
  readonly straight: number
  readonly radius: number
  readonly widthStraights: number
  readonly widthTurns: number
}

/** Readings of each station, in the order of the stations around the rail. */
export function byStation<R extends Reading>(
  readings: readonly R[],
): readonly { readonly station: number; readonly readings: readonly R[] }[] {
  const found = new Map<number, R[]>()
  for (const r of readings) found.set(r.station, [...(found.get(r.station) ?? []), r])
  return [...found]
    .sort(([a], [b]) => a - b)
    .map(([station, list]) => ({
      station,
      readings: list.toSorted((a, b) => a.offset - b.offset),
    }))
}
