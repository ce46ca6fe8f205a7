import { FT, IN, PCF, TON } from './realistic.ts'

/** What the tests of too thick and too thin a cushion go by, m². */
export const area = 180_000 * FT ** 2

/** A quarter inch too little of it. */
export const thin = {
  area,
  target: IN,
  found: 0.75 * IN,
  unitWeight: 105 * PCF,
  moisture: 0,
  load: 20 * TON,
  swell: 0.25,
}
