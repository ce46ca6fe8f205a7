/**
 * Radiation for reference evapotranspiration: FAO Irrigation and Drainage Paper 56 (1998), chapter
 * 3. MJ/m² in a day; angles in radians, latitude south negative.
 */

import { declination, sunsetAngle } from '../../model/day-length.ts'

const solarConstant = 0.082

/** Inverse relative distance of the sun (Eq. 23). */
export const sunDistance = (day: number): number => 1 + 0.033 * Math.cos((2 * Math.PI * day) / 365)

/** Radiation above the air (Eq. 21). */
export function extraterrestrial(latitude: number, day: number): number {
  const [d, ws] = [declination(day), sunsetAngle(latitude, day)]
  return (
    ((24 * 60) / Math.PI) *
    solarConstant *
    sunDistance(day) *
    (ws * Math.sin(latitude) * Math.sin(d) + Math.cos(latitude) * Math.cos(d) * Math.sin(ws))
  )
}

/** Solar radiation from hours of sunshine (Eq. 35). */
export const solarFromSunshine = (
  ra: number,
  sunHours: number,
  dayHours: number,
  a = 0.25,
  b = 0.5,
): number => (a + (b * sunHours) / dayHours) * ra

/**
 * Solar radiation from the day's range of temperature (Eq. 50); k is 0.16 inland, 0.19 at a coast.
 */
export const solarFromRange = (ra: number, tmax: number, tmin: number, k = 0.16): number =>
  k * Math.sqrt(tmax - tmin) * ra

/** Solar radiation of a cloudless day at an elevation in meters (Eq. 37). */
export const clearSky = (ra: number, elevation: number): number => (0.75 + 2e-5 * elevation) * ra

/** Net short-wave radiation of grass (Eq. 38). */
export const netShortWave = (rs: number): number => (1 - 0.23) * rs

const stefanBoltzmann = 4.903e-9

/** Net long-wave radiation going out (Eq. 39); vapor pressure in kPa, temperatures in °C. */
export function netLongWave(
  tmax: number,
  tmin: number,
  ea: number,
  rs: number,
  rso: number,
  zero = 273.16,
): number {
  const hot = (tmax + zero) ** 4
  const cold = (tmin + zero) ** 4
  return (
    ((stefanBoltzmann * (hot + cold)) / 2) *
    (0.34 - 0.14 * Math.sqrt(ea)) *
    (1.35 * Math.min(1, rs / rso) - 0.35)
  )
}

/** Depth of water, mm, that an amount of energy evaporates (Eq. 20). */
export const energyToDepth = (energy: number): number => 0.408 * energy
