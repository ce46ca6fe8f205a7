import * as z from 'zod'
import { surveyKinds } from '../../model/survey.ts'
import { line } from '../schemas/text.ts'
import type { Import } from './import.ts'
import { readSurvey, type Survey } from './survey-table.ts'
import { tableFile } from './table-file.ts'

/** An entry of `surveys` in the facility file: a table of ruler depths or staff levels. */
const surveyEntry = z.strictObject({ of: z.enum(surveyKinds), ...tableFile, by: line })

export const surveys = {
  under: 'top',
  entries: z.array(surveyEntry),
  read: readSurvey,
} as const satisfies Import<z.output<typeof surveyEntry>, Survey>
