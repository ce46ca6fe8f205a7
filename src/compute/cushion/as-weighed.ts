import type { InputSpec, OutputSpec } from '../calculation.ts'

/** Moisture by dry weight of what a truck carries. */
export const carriedMoisture: InputSpec = { symbol: 'w', kind: 'fineShare', range: [0, 0.4] }

/** What a truck scale shows of a dry mass, kg: the water in it counts. */
export const asWeighed = (mass: number, moisture: number): number => mass * (1 + moisture)

/** An amount to order, as it is delivered and weighed; never rounded down. */
export const orderOf = (mass: string): OutputSpec => ({
  symbol: 'M_o',
  kind: 'mass',
  tex: `@${mass} \\cdot (1 + @moisture)`,
  round: 'up',
})
