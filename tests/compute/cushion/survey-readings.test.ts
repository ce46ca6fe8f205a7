import { expect, it } from 'vitest'
import { surveyReadings } from '../../../src/compute/cushion/survey-readings.ts'

it('a survey of eight stations and three lines has 24 readings', () => {
  expect(surveyReadings.compute({ stations: 8, lines: 3 }).readings).toBe(24)
})
