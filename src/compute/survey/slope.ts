/**
 * Share of its weight with which a body on a slope pulls straight down the slope: sin(atan e). @see
 * geometry
 */
export const slopePull = (slope: number): number => Math.sin(Math.atan(slope))
