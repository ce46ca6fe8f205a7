import { dayNumber, dayOf } from '../../model/day.ts'

/**
 * Sunrise and sunset: NOAA Global Monitoring Laboratory, solar calculations (after Meeus,
 * Astronomical Algorithms, 1991). Angles in degrees here, as published.
 */

const rad = Math.PI / 180
const sin = (d: number): number => Math.sin(d * rad)
const cos = (d: number): number => Math.cos(d * rad)
const tan = (d: number): number => Math.tan(d * rad)

export type SunGeometry = {
  readonly meanLongitude: number
  readonly meanAnomaly: number
  readonly eccentricity: number
  readonly center: number
  readonly trueLongitude: number
  readonly apparentLongitude: number
  readonly meanObliquity: number
  readonly obliquity: number
  readonly declination: number
  readonly equationOfTime: number
}

/** The sun at one moment of a day, with what it was worked out from. */
export type SunEvent = {
  /** Minutes after local midnight. */
  readonly minutes: number
  /** The moment worked with, minutes after midnight UTC. */
  readonly moment: number
  readonly sun: SunGeometry
  /** Hour angle, degrees. */
  readonly angle: number
}

/** The sun at a time in Julian centuries from the year 2000; equation of time in minutes. */
export function sunGeometry(t: number): SunGeometry {
  const meanLongitude = (280.46646 + t * (36000.76983 + 0.0003032 * t)) % 360
  const meanAnomaly = 357.52911 + t * (35999.05029 - 0.0001537 * t)
  const eccentricity = 0.016708634 - t * (0.000042037 + 0.0000001267 * t)
  const center =
    sin(meanAnomaly) * (1.914602 - t * (0.004817 + 0.000014 * t)) +
    sin(2 * meanAnomaly) * (0.019993 - 0.000101 * t) +
    sin(3 * meanAnomaly) * 0.000289
  const trueLongitude = meanLongitude + center
  const node = 125.04 - 1934.136 * t
  const apparentLongitude = trueLongitude - 0.00569 - 0.00478 * sin(node)
  const meanObliquity = 23 + (26 + (21.448 - t * (46.815 + t * (0.00059 - 0.001813 * t))) / 60) / 60
  const obliquity = meanObliquity + 0.00256 * cos(node)
  const y = tan(obliquity / 2) ** 2
  const equationOfTime =
    (4 / rad) *
    (y * sin(2 * meanLongitude) -
      2 * eccentricity * sin(meanAnomaly) +
      4 * eccentricity * y * sin(meanAnomaly) * cos(2 * meanLongitude) -
      0.5 * y * y * sin(4 * meanLongitude) -
      1.25 * eccentricity * eccentricity * sin(2 * meanAnomaly))
  return {
    meanLongitude,
    meanAnomaly,
    eccentricity,
    center,
    trueLongitude,
    apparentLongitude,
    meanObliquity,
    obliquity,
    declination: Math.asin(sin(obliquity) * sin(apparentLongitude)) / rad,
    equationOfTime,
  }
}

/** Julian centuries from the year 2000 at a moment of a day, minutes after midnight UTC. */
export const julianCentury = (date: string, minutesUtc: number): number =>
  (dayNumber(date) + minutesUtc / 1440 + 2440587.5 - 2451545) / 36525

/**
 * Zenith angles of the sun's center: at sunrise and sunset, with refraction and half its width; at
 * the ends of civil twilight.
 */
export const horizon = 90.833
export const civilTwilight = 96

/**
 * Hour angle, degrees, at which the sun passes a zenith angle; undefined where it does not reach it
 * that day.
 */
export function riseAngle(
  latitude: number,
  declination: number,
  zenith = horizon,
): number | undefined {
  const c = cos(zenith) / (cos(latitude) * cos(declination)) - tan(latitude) * tan(declination)
  return Math.abs(c) > 1 ? undefined : Math.acos(c) / rad
}

/** Where and on which day, in degrees and hours; east and north positive. */
export type SunPlace = {
  /** `YYYY-MM-DD`. */
  readonly date: string
  readonly latitude: number
  readonly longitude: number
  /** Hours ahead of UTC on that day. */
  readonly zone: number
}

/**
 * The sun at a zenith angle in the morning (−1) or in the evening (1), or at noon (0); undefined
 * where it does not reach the angle that day. Worked at the event itself: three rounds bring it to
 * a second.
 */
export function sunEvent(
  { date, latitude, longitude, zone }: SunPlace,
  side: -1 | 0 | 1,
  zenith = horizon,
): SunEvent | undefined {
  let moment = 720 - 4 * longitude
  let event: SunEvent | undefined
  for (let round = 0; round < 3; round++) {
    const sun = sunGeometry(julianCentury(date, moment))
    const angle = side === 0 ? 0 : riseAngle(latitude, sun.declination, zenith)
    if (angle === undefined) return undefined
    const next = 720 - 4 * (longitude - side * angle) - sun.equationOfTime
    event = { minutes: next + 60 * zone, moment, sun, angle }
    moment = next
  }
  return event
}

const degrees = (radians: number): number => radians / rad

/** The place of a calculation, whose angles are radians and whose times are seconds. */
export const sunPlaceOf = (x: {
  readonly day: number
  readonly latitude: number
  readonly longitude: number
  readonly zone: number
}): SunPlace => ({
  date: dayOf(Math.round(x.day)),
  latitude: degrees(x.latitude),
  longitude: degrees(x.longitude),
  zone: x.zone / 3600,
})
