/**
 * Why a number is fixed by the question and not by the facility; the reasons in words stand under
 * these ids in content/worksheets.
 */
export const reasons = [
  'one-step-out',
  'one-step-deep',
  'damp-print',
  'nothing-flattens',
  'nothing-rolls',
  'nothing-presses',
  'shut-by-rolling',
  'half-the-roller',
  'bucket-a-minute',
  'no-blade',
  'rented-bucket',
  'rented-loader',
  'one-harrow-step',
  'clean-stone',
  'bare-ground',
  'sealed-surface',
  'bag-in-front',
  'bag-on-ground',
  'bag-to-truck-bed',
  'bag-to-one-side',
  'bag-now-and-then',
  'bag-without-handles',
  'no-water-truck',
  'nothing-harrows',
  'no-grader',
  'no-refill',
  'plan-modules',
  'before-and-after-card',
  'after-the-card',
  'no-water-price',
  'as-at-sea',
  'square-to-travel',
  'edge-to-edge',
  'given',
] as const

export type ReasonId = (typeof reasons)[number]
