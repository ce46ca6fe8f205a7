import * as z from 'zod'
import { isDevice, line, noFile } from '../schemas/text.ts'

/** How a facility file names a table in its folder: a text, or a sheet of a workbook. */
export const tableFile = {
  file: z
    .string()
    .regex(/^[\w.-]+\.(csv|xlsx)$/i, {
      error: 'the name of a table in this folder (.csv or .xlsx), such as depths.csv',
    })
    .refine((name) => !isDevice(name), { error: noFile }),
  /** Of a workbook; the first that holds something, where none is named. */
  sheet: line.optional(),
} as const
