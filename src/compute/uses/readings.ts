import type { DensityTest, SieveTest } from '../../model/material-tests.ts'
import type { SurveyDay } from '../../model/survey.ts'
import type { WeatherDay } from '../../model/weather.ts'

/**
 * What uses work with beside single facts: the latest survey of each kind, the record of daily
 * weather, tests of the material.
 */
export type Readings = {
  readonly depths?: SurveyDay | undefined
  readonly levels?: SurveyDay | undefined
  readonly weather?: readonly WeatherDay[] | undefined
  readonly sieve?: SieveTest | undefined
  readonly densities?: readonly DensityTest[] | undefined
}

const sampleDay: SurveyDay = {
  date: '',
  readings: [0, 100, 200].flatMap((station) =>
    [1, 9].map((offset) => ({ station, offset, value: 0.03 })),
  ),
}

/** Calculations over readings, which cannot be typed. */
export const ofReadings: ReadonlySet<string> = new Set([
  'level-survey',
  'depth-survey',
  'depth-balance',
  'weather-record',
  'sieve-analysis',
  'base-density',
])

/** Data of every kind, so that uses made with it have every figure there can be. */
export const sampleReadings = {
  depths: sampleDay,
  levels: sampleDay,
  weather: [
    {
      date: '2000-07-01',
      high: 300,
      low: 288,
      rain: 0,
      humidity: undefined,
      wind: undefined,
      sun: undefined,
    },
  ],
  sieve: {
    date: '',
    by: '',
    sieves: [
      { name: 'No. 4', opening: 0.00475, passing: 1 },
      { name: 'No. 200', opening: 0.000075, passing: 0.1 },
    ],
    clay: undefined,
    limits: undefined,
  },
  densities: [{ wet: 2000, moisture: 0.1 }],
} satisfies Readings
