import * as z from 'zod'

/** Letters, digits and hyphens: ids become file names, links and anchors. */
export const id = z.string().regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, {
  error: 'an id: small letters, digits and single hyphens, such as "seal-before-rain"',
})

/** One line of plain text that may hold `{figure.id}`; no Markdown blocks. */
export const line = z
  .string()
  .trim()
  .min(1, { error: 'some text' })
  .max(400, { error: 'one line of at most 400 characters' })

/** Markdown that may hold `{figure.id}` and links such as `[seal it](procedure:seal)`. */
export const prose = z
  .string()
  .trim()
  .min(1, { error: 'some text' })
  .max(6000, { error: 'at most 6,000 characters' })

/** Named quantities: a fact's path or a figure's id. */
export const figureName = z
  .string()
  .regex(/^[a-z][a-z0-9-]*(\.[a-z0-9-]+)+$/, { error: 'a figure or fact, such as "grade.time"' })
