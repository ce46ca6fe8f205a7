import fc from 'fast-check'

/**
 * Sizes as they occur, in whole feet, inches and the like, so that a property never meets a track
 * of 1e-300 m.
 */
export const feet = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min, max }).map((n) => n * 0.3048)
export const inches = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: min * 16, max: max * 16 }).map((n) => (n / 16) * 0.0254)
export const percent = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 1000)
export const pcf = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min, max }).map((n) => n * 16.01846337396014)
export const mph = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: min * 2, max: max * 2 }).map((n) => (n / 2) * 0.44704)
export const whole = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max })

/** Half-mile ovals and their neighbors, with one width all around. */
export const ovals = fc
  .record({ straight: feet(300, 1400), radius: feet(120, 500), width: feet(40, 90) })
  .map(({ straight, radius, width }) => ({
    straight,
    radius,
    widthStraights: width,
    widthTurns: width,
  }))

/** Few runs: what these properties catch shows at once. */
export const FEW = { numRuns: 40 } as const

export const FT = 0.3048
export const IN = 0.0254
export const MPH = 0.44704
export const PCF = 16.01846337396014
export const TON = 907.18474
export const FT3 = FT ** 3
export const YD3 = 27 * FT3
export const GAL = 0.003785411784
