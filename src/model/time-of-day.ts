import type { UnitSystem } from './quantity/kinds.ts'

const pattern = /^(\d{1,2}):([0-5]\d)(?:\s*([ap])\.?m\.?)?$/i

/** Seconds after midnight of `13:30`, `1:30 PM` or `1:30 p.m.`; undefined for what is no time. */
export function readTimeOfDay(text: string): number | undefined {
  const found = pattern.exec(text.trim())
  if (!found) return undefined
  const [, hours, minutes, half] = found
  const hour = Number(hours)
  if (half === undefined ? hour > 23 : hour < 1 || hour > 12) return undefined
  const from = half === undefined ? hour : (hour % 12) + (half.toLowerCase() === 'p' ? 12 : 0)
  return from * 3600 + Number(minutes) * 60
}

const hour = 60
const day = 24 * hour

/**
 * A time of day as people of the place say it: 1:30 PM where units are those of the United States,
 * else 13:30.
 * @param minutes After midnight; beyond a day it is the hour of the next one.
 */
export function timeOfDay(
  minutes: number,
  system: UnitSystem,
): { readonly number: string; readonly unit: string } {
  const whole = ((Math.round(minutes) % day) + day) % day
  const [hours, past] = [Math.floor(whole / hour), String(whole % hour).padStart(2, '0')]
  return system === 'us'
    ? { number: `${hours % 12 || 12}:${past}`, unit: hours < 12 ? 'AM' : 'PM' }
    : { number: `${hours}:${past}`, unit: '' }
}
