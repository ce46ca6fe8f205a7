/**
 * Way of a water truck (m) that goes once around with the end of its bar at the rail: its own middle
 * is half a bar, m, farther out. Each meter outward makes a lap 2π m longer.
 */
export const besideRail = (rail: number, bar: number): number => rail + Math.PI * bar
