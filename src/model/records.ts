import type { FactPath } from './fact-spec.ts'

/**
 * Numbers that a phone keeps of a day or of a row, each by the name of its column in the tables of
 * a facility folder, with the fact whose kind and range it has. Weights of jars have no unit: only
 * their ratio counts.
 */
export const keptNumbers = {
  high: 'climate.tmax',
  low: 'climate.tmin',
  rain: 'weather.rain',
  humidity: 'climate.humidity',
  wind: 'climate.wind',
  sun: 'climate.sun',
  loads: 'watering.loads',
  stored: 'water.storage',
  depth: 'survey.depth',
  station: 'survey.station',
  offset: 'survey.offset',
  moisture: 'cushion.moisture.found',
} as const satisfies Readonly<Record<string, FactPath>>
export type KeptNumber = keyof typeof keptNumbers

/** Weights of a sample as the scale reads them. */
const keptWeights = ['wet', 'dry', 'jar'] as const

/** Words that a phone keeps of a day, each a column of the daily log's table. */
export const keptWords = ['use', 'by', 'work', 'seen', 'tomorrow'] as const
export type KeptWord = (typeof keptWords)[number]

/**
 * What a place to write on a form is on a phone: numbers and words that are kept under their own
 * name, so that what two forms ask for is written once; `day` and `time` say when, and `words` is
 * what else stands in that place.
 */
export const phoneFields = [
  'day',
  'time',
  'words',
  ...(Object.keys(keptNumbers) as KeptNumber[]),
  ...keptWeights,
  ...keptWords,
] as const
export type PhoneField = (typeof phoneFields)[number]

/** Whether a name is that of a number that is kept. */
export const isKeptNumber = (name: string): name is KeptNumber => Object.hasOwn(keptNumbers, name)

/** A place of the depth survey: meters from the start of its line, and as it is printed. */
export type GridLine = { readonly si: number; readonly text: string }

/** What one day of a record says in a chart: the middle value, and how far others reach; SI. */
export type PastDay = {
  readonly date: string
  readonly value: number
  readonly least?: number
  readonly most?: number
}

/** From the least to the most, SI. */
export type Span = readonly [least: number, most: number]

/** What a phone has to know of the facility to keep its records. */
export type ManualRecords = {
  readonly stations: readonly GridLine[]
  readonly offsets: readonly GridLine[]
  /** What is usual here, where that is known. */
  readonly usual: Readonly<Partial<Record<KeptNumber, Span>>>
  /** What is wanted here. */
  readonly wanted: Readonly<Partial<Record<KeptNumber, number>>>
  /** Readings of the facility folder, oldest first. */
  readonly past: Readonly<Partial<Record<KeptNumber, readonly PastDay[]>>>
}

/** Names of what a phone keeps of one reading of the depth, from its place in meters. */
export const depthName = (station: number, offset: number): string =>
  `depth@${station.toFixed(3)},${offset.toFixed(3)}`
