/**
 * Air and vapor for reference evapotranspiration: FAO Irrigation and Drainage Paper 56 (1998),
 * chapter 3. Temperatures in °C, pressures in kPa.
 */

/** Atmospheric pressure, kPa, at an elevation in meters (Eq. 7). */
export const airPressure = (elevation: number): number =>
  101.3 * ((293 - 0.0065 * elevation) / 293) ** 5.26

/** Psychrometric constant, kPa/°C (Eq. 8). */
export const psychrometric = (pressure: number): number => 0.000665 * pressure

/** Saturation vapor pressure, kPa (Eq. 11). */
export const saturation = (t: number): number => 0.6108 * Math.exp((17.27 * t) / (t + 237.3))

/**
 * Mean saturation vapor pressure of a day, kPa (Eq. 12); never that of the mean temperature, which
 * is always too low.
 */
export const meanSaturation = (tmax: number, tmin: number): number =>
  (saturation(tmax) + saturation(tmin)) / 2

/** Slope of the saturation curve, kPa/°C (Eq. 13). */
export const saturationSlope = (t: number): number => (4098 * saturation(t)) / (t + 237.3) ** 2

/** Actual vapor pressure, kPa, from mean relative humidity as a fraction (Eq. 19). */
export const vaporFromMean = (tmax: number, tmin: number, rhMean: number): number =>
  rhMean * meanSaturation(tmax, tmin)

/** Wind at 2 m, m/s, from wind at height z in meters over short grass (Eq. 47). */
export const windAtTwoMeters = (wind: number, z: number): number =>
  (wind * 4.87) / Math.log(67.8 * z - 5.42)
