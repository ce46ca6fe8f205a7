import { shapeOf } from '../../validate/schema-advice/schema-keys.ts'
import { facility } from '../../validate/schemas/facility.ts'
import { schemaLine } from '../schema-line.ts'
import { type Spliced, splice } from '../splice.ts'
import type { Value } from '../written.ts'
import type { Asked } from './merge.ts'

/** A facility file made of nothing but data, its entries in the order of the schema. */
function fresh(data: Readonly<Record<string, Value>>): Spliced {
  let text = `${schemaLine}\n`
  for (const key of Object.keys(shapeOf(facility))) {
    const value = data[key]
    if (value === undefined) continue
    const made = splice(text, { path: [key], value })
    if (!made.ok) return made
    text = made.text
  }
  return { ok: true, text }
}

/** Changes and additions first, since what is taken out moves the numbers behind it. */
export const inOrder = (asked: readonly Asked[]): readonly Asked[] => [
  ...asked.filter((one) => one.value !== undefined),
  ...asked
    .filter((one) => one.value === undefined)
    .toSorted(
      (a, b) => Number(b.path.findLast(isNumber) ?? 0) - Number(a.path.findLast(isNumber) ?? 0),
    ),
]

const isNumber = (step: string | number): step is number => typeof step === 'number'

/**
 * The facility file with changes; one that is there keeps every other byte.
 * @param text The file as it is; undefined where there is none yet.
 * @param data What it must say afterwards.
 */
export function wholeText(
  text: string | undefined,
  asked: readonly Asked[],
  data: unknown,
): Spliced {
  if (text === undefined) return fresh(data as Readonly<Record<string, Value>>)
  let made = text
  for (const { path, value } of inOrder(asked)) {
    const next = splice(made, { path, value })
    if (!next.ok) return next
    made = next.text
  }
  return { ok: true, text: made }
}
