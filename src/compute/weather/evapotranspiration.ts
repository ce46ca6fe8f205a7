import { energyToDepth } from './radiation.ts'

/**
 * Inputs of the Penman–Monteith equation: radiation MJ/m² in a day, temperature °C, wind m/s at 2
 * m, pressures kPa.
 */
export type PenmanMonteith = {
  readonly rn: number
  readonly g: number
  readonly t: number
  readonly u2: number
  readonly es: number
  readonly ea: number
  readonly delta: number
  readonly gamma: number
  /**
   * Constants of the reference: 900 and 0.34 for grass (FAO-56 Eq. 6), 1600 and 0.38 for alfalfa
   * (ASCE 2005).
   */
  readonly cn?: number
  readonly cd?: number
}

/** Reference evapotranspiration, mm a day: FAO Irrigation and Drainage Paper 56 (1998), Eq. 6. */
export function penmanMonteith({
  rn,
  g,
  t,
  u2,
  es,
  ea,
  delta,
  gamma,
  cn = 900,
  cd = 0.34,
}: PenmanMonteith): number {
  return (
    (energyToDepth(delta * (rn - g)) + ((gamma * cn) / (t + 273)) * u2 * (es - ea)) /
    (delta + gamma * (1 + cd * u2))
  )
}

/**
 * Reference evapotranspiration, mm a day, where only temperatures (°C) are known: FAO-56 Eq. 52
 * (Hargreaves). Best over five days and more.
 * @param ra Radiation above the air, MJ/m² in a day.
 */
export const hargreaves = (
  ra: number,
  tmax: number,
  tmin: number,
  tmean = (tmax + tmin) / 2,
): number => 0.0023 * (tmean + 17.8) * Math.sqrt(tmax - tmin) * energyToDepth(ra)
