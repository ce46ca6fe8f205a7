import * as z from 'zod'

/** The name of a table in the facility folder. */
export const csvName = z
  .string()
  .regex(/^[\w.-]+\.csv$/i, { error: 'the name of a CSV file in this folder, such as depths.csv' })
