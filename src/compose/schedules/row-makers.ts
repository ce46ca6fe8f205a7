import type { TableRows } from '../../model/manual/schedule.ts'
import type { RowSource } from '../../validate/schemas/plans.ts'
import type { ComposeContext } from '../context.ts'
import { materialClassRows, sievePointRows } from '../material/material-class.ts'
import { surveyDayRows, surveyMoveRows, surveyStationRows } from '../survey/depth-survey.ts'
import { levelStationRows } from '../survey/level-survey.ts'
import { raceDayHourInputs, raceDayHourRows } from './race-day-hours.ts'
import { seasonDayRows, seasonInputs, seasonWeekRows } from './season-rows.ts'
import { symptomChartRows } from './symptom-chart.ts'
import { eveningRows, halfDayRows, roleRows, signOffRows } from './training.ts'
import { weatherDayInputs, weatherDayRows } from './weather-days.ts'
import { workDailyRows, workDayRows, workLeftRows } from './work-rows.ts'

/** Who makes the rows of a table that no author writes. */
export const rowMakers: Readonly<Record<RowSource, (context: ComposeContext) => TableRows>> = {
  'survey-days': surveyDayRows,
  'survey-stations': surveyStationRows,
  'survey-moves': surveyMoveRows,
  'level-stations': levelStationRows,
  'race-day-hours': raceDayHourRows,
  'weather-days': weatherDayRows,
  'season-weeks': seasonWeekRows,
  'season-days': seasonDayRows,
  'sieve-points': sievePointRows,
  'material-class': materialClassRows,
  'training-half-day': halfDayRows,
  'training-evenings': eveningRows,
  'training-by-role': roleRows,
  'sign-off': signOffRows,
  'symptom-chart': symptomChartRows,
  'work-daily': workDailyRows,
  'work-days': workDayRows,
  'work-left': workLeftRows,
}

/** Names of the figures and facts that made rows are worked out from, beside readings. */
export const madeFrom: Readonly<Partial<Record<RowSource, readonly string[]>>> = {
  'race-day-hours': Object.values(raceDayHourInputs),
  'weather-days': Object.values(weatherDayInputs),
  'season-weeks': Object.values(seasonInputs),
}
