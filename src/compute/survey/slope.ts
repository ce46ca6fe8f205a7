import { positive } from '../materials/guards.ts'

/**
 * Slope as rise over level run. @throws RangeError unless the run is above zero. @see geometry
 * @example slopeOf(6, 115) // 0.0522
 */
export const slopeOf = (rise: number, run: number): number => rise / positive('run', run)

/** Angle, rad, of a slope given as rise over run: 5 % is 2.9 degrees. @see geometry */
export const slopeAngle = (slope: number): number => Math.atan(slope)

/**
 * Share of its weight with which a body on a slope pulls straight down the slope: sin(atan e). @see
 * geometry
 */
export const slopePull = (slope: number): number => Math.sin(Math.atan(slope))

/** Area of a sloping surface for each unit of its area seen from above: √(1 + e²). @see geometry */
export const slopeStretch = (slope: number): number => Math.sqrt(1 + slope ** 2)
