/** Everything that is drawn from a facility's own numbers; content names a drawing by these. */
export const drawingNames = [
  'plan',
  'plan-small',
  'section-straight',
  'section-turn',
  'levels',
  'cushion',
  'grains',
  'washout',
  'rolling',
  'pullback',
  'ridge',
  'water-pass',
  'passes-grade',
  'passes-harrow',
  'passes-screen',
  'passes-drum',
  'passes-condition',
  'passes-water',
  'countdown',
  'water-months',
  'drying',
  'race-interval',
  'heat-index',
] as const

export type DrawingName = (typeof drawingNames)[number]
