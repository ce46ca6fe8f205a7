import type { OvalGeometry } from '../../../src/model/manual/geometry.ts'

/** An oval of these measures, m, with nothing along it. */
export const ovalOf = (
  straight: number,
  radius: number,
  [widthStraights, widthTurns]: readonly [number, number] = [20, 20],
): OvalGeometry => ({
  straight,
  radius,
  offset: 0.9144,
  lap: 0,
  railLength: 2 * straight + 2 * Math.PI * radius,
  widthStraights,
  widthTurns,
  crossFallStraights: 0.02,
  crossFallTurns: 0.06,
  stationSpacing: 25,
  rail: 'pylons',
  direction: 'counterclockwise',
  homeBearing: undefined,
  foundStraights: undefined,
  foundTurns: undefined,
  cushionDepth: 0.03,
  baseDepth: undefined,
  ridgeHeight: 0.02,
  marks: [],
})

/** A gate in the outer fence. */
export const gateAt = (
  station: number,
  name = 'Gate',
  machines = false,
): OvalGeometry['marks'][number] => ({
  kind: 'gate',
  name,
  station,
  offset: 20,
  gate: undefined,
  machines,
})
