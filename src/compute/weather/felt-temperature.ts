/**
 * How hot or cold the air feels: US National Weather Service. Temperatures in °F, humidity in
 * percent, wind in mph.
 */

/** The sum of nine terms, °F. */
export function regression(t: number, rh: number): number {
  return (
    -42.379 +
    2.04901523 * t +
    10.14333127 * rh -
    0.22475541 * t * rh -
    0.00683783 * t * t -
    0.05481717 * rh * rh +
    0.00122874 * t * t * rh +
    0.00085282 * t * rh * rh -
    0.00000199 * t * t * rh * rh
  )
}

/** What very dry or very moist air changes, °F. */
export function adjustment(t: number, rh: number): number {
  if (rh < 13 && t >= 80 && t <= 112)
    return -((13 - rh) / 4) * Math.sqrt((17 - Math.abs(t - 95)) / 17)
  return rh > 85 && t >= 80 && t <= 87 ? ((rh - 85) / 10) * ((87 - t) / 5) : 0
}

/** A first guess, °F; below 80 it is the answer. */
export const simpleIndex = (t: number, rh: number): number =>
  0.5 * (t + 61 + 1.2 * (t - 68) + 0.094 * rh)

/**
 * Heat index in the shade, °F (Weather Prediction Center, heat index equation). Full sun adds up to
 * 15 °F. The printed chart leaves the adjustments for very dry and very moist air out.
 */
export function heatIndex(t: number, rh: number): number {
  const simple = simpleIndex(t, rh)
  return simple < 80 ? simple : regression(t, rh) + adjustment(t, rh)
}

/** Wind chill, °F (2001 formula): for 50 °F and below, wind above 3 mph. */
export const windChill = (t: number, wind: number): number =>
  35.74 + 0.6215 * t - 35.75 * wind ** 0.16 + 0.4275 * t * wind ** 0.16
