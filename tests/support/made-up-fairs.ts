import { mkdir, writeFile } from 'node:fs/promises'
import path from 'node:path'

/** Numbers from 0 up to 1 that look like chance and are the same for the same seed (mulberry32). */
function chance(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

type Draw = {
  /** A whole number from the first to the last, both included. */
  readonly whole: (first: number, last: number) => number
  readonly one: <T>(of: readonly T[]) => T
  readonly often: (share: number) => boolean
}

function drawing(seed: number): Draw {
  const next = chance(seed)
  // The first numbers of neighbouring seeds are alike.
  for (let i = 0; i < 8; i++) next()
  const whole: Draw['whole'] = (first, last) => first + Math.floor(next() * (last - first + 1))
  return {
    whole,
    one: (of) => of[whole(0, of.length - 1)] as (typeof of)[number],
    often: (share) => next() < share,
  }
}

const begins = ['Vorn', 'Quell', 'Thrax', 'Ombre', 'Zwet', 'Plim', 'Gorl', 'Yast', 'Ruvel', 'Hesk']
const ends = ['mere', 'lock', 'wick', 'ham', 'stow', 'ness', 'field', 'combe', 'holt', 'gate']

const lengths = {
  us: (feet: number): string => `"${feet} ft"`,
  metric: (feet: number): string => `${Math.round(feet * 3.048) / 10} m`,
}

type Units = keyof typeof lengths

/** A facility's shape: a lap of half a mile with straights of some length. */
function oval({ whole, one, often }: Draw, units: Units): readonly string[] {
  const length = lengths[units]
  return [
    'oval:',
    `  lap: ${length(2640)}`,
    `  straight: ${length(whole(54, 68) * 10)}`,
    ...(often(0.7)
      ? [`  width: { straights: ${length(whole(50, 75))}, turns: ${length(whole(55, 80))} }`]
      : []),
    ...(often(0.5)
      ? [`  cross-fall: { straights: ${whole(15, 30) / 10} %, turns: ${whole(40, 70) / 10} % }`]
      : []),
    `  rail: ${one(['pylons', 'hub-rail'])}`,
  ]
}

function equipment({ whole, one, often }: Draw, units: Units): readonly string[] {
  const length = lengths[units]
  const speed = (mph: number): string =>
    units === 'us' ? `${mph} mph` : `${Math.round(mph * 16.1) / 10} km/h`
  const volume = (gallons: number): string =>
    units === 'us' ? `"${gallons} gal"` : `"${Math.round(gallons * 0.38) * 10} L"`
  const gear = (id: string, name: string, can: string, ...more: readonly string[]): string =>
    `  - { id: ${id}, name: ${name}, can: [${can}], from: ${one(['own', 'own', 'borrowed', 'hired'])}${more.map((m) => `, ${m}`).join('')} }`
  const blade = [`width: ${length(whole(8, 12))}`, `speed: ${speed(whole(3, 5))}`]
  return [
    'equipment:',
    gear('harrow', 'the drag harrow', 'harrow', `width: ${length(whole(7, 14))}`),
    ...(often(0.8)
      ? [gear('tanker', 'the water truck', 'spray', `tank: ${volume(whole(8, 30) * 100)}`)]
      : []),
    ...(often(0.5) ? [gear('grader', 'the motor grader', 'grade', ...blade)] : []),
    ...(often(0.6) ? [gear('screen', 'the light screen', 'screen', `width: ${length(14)}`)] : []),
    ...(often(0.3) ? [gear('tamper', 'the plate tamper', 'tamp')] : []),
  ]
}

function raceDays({ whole, often }: Draw): readonly string[] {
  const first = whole(1, 24)
  return [
    'race-days:',
    ...Array.from({ length: whole(1, 4) }, (_, i) => {
      const day = String(first + i).padStart(2, '0')
      const post = often(0.5) ? '13:00' : '18:30'
      return `  - { date: 2027-08-${day}, first-post: "${post}", races: ${whole(5, 12)} }`
    }),
  ]
}

/**
 * The file of a facility that nobody has: the same seed gives the same one. Its units, paper, shape,
 * machines, days and measurements differ from those of its neighbours.
 */
export function madeUpFair(seed: number): { readonly id: string; readonly text: string } {
  const draw = drawing(seed)
  const { whole, one, often } = draw
  const units: Units = often(0.6) ? 'us' : 'metric'
  const town = `${one(begins)}${one(ends)}`
  const id = `${town.toLowerCase()}-${seed}`
  const found = units === 'us' ? `${whole(8, 18) / 8} in` : `${whole(20, 45)} mm`
  const lines = [
    `id: ${id}`,
    `name: ${town} ${one(['County Fair', 'Agricultural Society', 'Harness Club'])} ${seed}`,
    `place: { town: ${town}, latitude: ${whole(380, 460) / 10}, longitude: -${whole(700, 990) / 10}, time-zone: America/Chicago }`,
    `units: ${units}`,
    `paper: ${units === 'us' ? 'letter' : 'a4'}`,
    `revision: ${whole(1, 9)}`,
    'as-of: 2027-06-14',
    ...oval(draw, units),
    `cushion: { material: ${one(['clay', 'stone-dust'])} }`,
    ...equipment(draw, units),
    `crew: { people: ${whole(1, 5)} }`,
    ...raceDays(draw),
    'contacts:',
    `  - { role: superintendent, name: Pat ${one(begins)}${one(ends)}, phone: "ext. ${whole(10, 99)}" }`,
    'measurements:',
    `  - { of: cushion.depth.found, value: ${found}, date: 2027-06-0${whole(1, 9)}, by: P. Pat }`,
  ]
  return { id, text: `${lines.join('\n')}\n` }
}

/** Writes folders of made-up facilities below a folder, one for each seed from 1. @returns the folders. */
export async function writeMadeUpFairs(folder: string, count: number): Promise<readonly string[]> {
  const made: string[] = []
  for (let seed = 1; seed <= count; seed++) {
    const { id, text } = madeUpFair(seed)
    const own = path.join(folder, id)
    await mkdir(own, { recursive: true })
    await writeFile(path.join(own, 'facility.yaml'), text)
    made.push(own)
  }
  return made
}
