import { positive } from '../materials/guards.ts'

/**
 * Power, W, of a pull (N) at a speed (m/s). @throws RangeError when an argument is out of range.
 * @see isu-a3-26
 */
export const pullPower = (pull: number, speed: number): number =>
  positive('pull', pull) * positive('speed', speed)

/**
 * Draft, N, of an implement: width (m) × draft of each meter (N/m). @throws RangeError when an
 * argument is out of range. @see isu-a3-26
 */
export const implementDraft = (width: number, unitDraft: number): number =>
  positive('width', width) * positive('unit draft', unitDraft)

/**
 * Power-take-off power that a pull asks of a tractor.
 * @param drawbar W at the drawbar, above 0.
 * @param traction Share of it that reaches the ground, above 0: 0.87 on concrete, 0.72 on firm
 * soil, 0.55 on soft, two-wheel drive.
 * @returns W, not rounded.
 * @throws RangeError when an argument is out of range.
 * @see isu-a3-26
 */
export const takeOffPower = (drawbar: number, traction: number): number =>
  positive('drawbar power', drawbar) / positive('traction', traction)
