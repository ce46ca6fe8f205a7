import * as z from 'zod'
import { useTable } from '../../compute/uses/use-table.ts'

const known = Object.keys(useTable)

/** Every worksheet that there can be stands under one subject, so that its figures are found. */
export const subjectsOfAll = z
  .array(
    z.looseObject({
      worksheets: z.array(z.enum(known, { error: 'the id of a worksheet, such as harrow' })),
    }),
  )
  .superRefine((subjects, context) => {
    const named = subjects.flatMap(({ worksheets }) => worksheets)
    for (const id of known) {
      const times = named.filter((other) => other === id).length
      if (times !== 1)
        context.addIssue({
          code: 'custom',
          message: `worksheet "${id}" stands under ${times === 0 ? 'no subject' : 'several'}`,
        })
    }
  })
