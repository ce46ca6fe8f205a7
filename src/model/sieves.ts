/**
 * Openings of sieves, meters, by their designation. The number of a sieve is no count that can be
 * converted: it has to be looked up.
 * @see astm-e11
 */
const millimeters: Readonly<Record<string, number>> = {
  '3 in': 75,
  '2.5 in': 63,
  '2 in': 50,
  '1.5 in': 37.5,
  '1 in': 25,
  '3/4 in': 19,
  '1/2 in': 12.5,
  '3/8 in': 9.5,
  '1/4 in': 6.3,
  'No. 3.5': 5.6,
  'No. 4': 4.75,
  'No. 5': 4,
  'No. 6': 3.35,
  'No. 7': 2.8,
  'No. 8': 2.36,
  'No. 10': 2,
  'No. 16': 1.18,
  'No. 20': 0.85,
  'No. 30': 0.6,
  'No. 40': 0.425,
  'No. 50': 0.3,
  'No. 60': 0.25,
  'No. 80': 0.18,
  'No. 100': 0.15,
  'No. 140': 0.106,
  'No. 200': 0.075,
  'No. 270': 0.053,
}

/** All designations, coarsest first. */
export const sieveNames: readonly string[] = Object.keys(millimeters)

/**
 * Opening of a sieve.
 * @param name Designation such as `No. 200` or `3/8 in`.
 * @returns Meters; undefined for a sieve that is not in the table.
 */
export function sieveOpening(name: string): number | undefined {
  const found = millimeters[name]
  return found === undefined ? undefined : found / 1000
}
