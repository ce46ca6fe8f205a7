import { readFileSync } from 'node:fs'
import path from 'node:path'
import { parse } from 'yaml'
import * as z from 'zod'
import { edited } from './bad-input.ts'
import { testsFolder } from './demo.ts'

const table = z.strictObject({
  start: z.string(),
  mistakes: z.array(
    z.strictObject({
      name: z.string(),
      replace: z.record(z.string(), z.string()).default({}),
      add: z.string().default(''),
      text: z.string().optional(),
    }),
  ),
})

const read = () =>
  table.parse(
    parse(readFileSync(path.join(testsFolder, 'fixtures', 'typed', 'mistakes.yaml'), 'utf8')),
  )

/** The facility file in which the mistakes are made. */
export const withoutMistake = (): string => read().start

/** Mistakes of people who type a facility file, each in a file that is sound but for it. */
export function mistakesOfTyping(): readonly { readonly name: string; readonly text: string }[] {
  const { start, mistakes } = read()
  return mistakes.map((m) => ({ name: m.name, text: edited(start, m) }))
}
