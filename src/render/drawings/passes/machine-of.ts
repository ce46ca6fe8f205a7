import type { PassPattern } from '../../../model/manual/charts.ts'
import { foot } from '../../../model/quantity/units.ts'
import { placed } from '../ink.ts'
import { angledHarrow, backBlade, conditioner, grader, harrow } from '../machines/tractors.ts'
import { drumRoller, dumpTruck, screen, waterTruck } from '../machines/trucks.ts'

type Draw = (k: number, width: number, pen: number, angle: number) => string

type Machine = {
  /** Drawn around its own middle: `k` points a foot, width of the tool in feet, angle in radians. */
  readonly draw: Draw
  /** How far ahead of that middle it reaches, and where its tool meets new ground, feet. */
  readonly reach: number
  readonly tool: number
}

/** Trucks that roll follow each other, the second a little farther out. */
const twoTrucks: Draw = (k, _, pen) =>
  placed([32 * k, 0], dumpTruck(k, 7.8, pen)) + placed([0, 0.6 * k], dumpTruck(k, 7.8, pen))

/** The machine of each work, by the name of its figures. */
const machines: Readonly<Record<string, Machine>> = {
  harrow: { draw: harrow, reach: 10, tool: -6.4 },
  condition: { draw: conditioner, reach: 10, tool: -6.6 },
  screen: { draw: screen, reach: 14, tool: -10 },
  spray: { draw: waterTruck, reach: 17, tool: -12 },
  drum: { draw: drumRoller, reach: 9.4, tool: 6 },
  grade: { draw: grader, reach: 15, tool: 1.2 },
  roll: { draw: twoTrucks, reach: 16, tool: -9 },
  'draw-in': { draw: angledHarrow, reach: 10, tool: -9.8 },
  'grade-band': { draw: backBlade, reach: 10, tool: -8 },
}

/** The same for drawings in meters: `k` points a meter. */
export function machineOf({ figure, tool, angle }: PassPattern) {
  const machine = machines[figure]
  if (!machine) throw new RangeError(`no machine is drawn for ${figure}`)
  return {
    draw: (k: number, pen: number): string => machine.draw(k * foot, tool / foot, pen, angle),
    reach: machine.reach * foot,
    tool: machine.tool * foot,
  }
}
