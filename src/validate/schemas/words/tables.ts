import * as z from 'zod'
import { entries } from './group.ts'

/** Tables to reckon further with, in a workbook and as text, and calendars. */
export const tables = z.strictObject(
  entries(
    'title',
    'about',
    'workbook',
    'calendars',
    'calendarsAbout',
    'figures',
    'worksheet',
    'name',
    'what',
    'value',
    'number',
    'unit',
    'si',
    'estimate',
    'yes',
    'no',
    'missing',
    'rests',
    'table',
  ),
)
