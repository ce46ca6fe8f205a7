import type { Problem } from '../../../model/problem.ts'
import type { Path } from '../../../read/read-yaml.ts'
import type { ParsedFacility } from '../parsed-facility.ts'

/** Signs that stand for some currencies and for no other. */
const signs: Readonly<Record<string, readonly string[]>> = {
  $: ['USD', 'CAD', 'AUD', 'NZD', 'MXN'],
  '€': ['EUR'],
  '£': ['GBP'],
}

/** Every text of a tree of entries, with its path. */
function texts(data: unknown, path: Path = []): { readonly path: Path; readonly text: string }[] {
  if (typeof data === 'string') return [{ path, text: data }]
  if (typeof data !== 'object' || data === null) return []
  return Object.entries(data).flatMap(([key, value]) =>
    texts(value, [...path, Array.isArray(data) ? Number(key) : key]),
  )
}

/** Prices are written in the currency that the file says. */
export function checkMoney({ file, tree }: ParsedFacility): Problem[] {
  const { currency } = file
  if (currency === undefined) return []
  const data = tree.data as { readonly prices?: unknown; readonly equipment?: unknown }
  return [...texts(data.prices, ['prices']), ...texts(data.equipment, ['equipment'])].flatMap(
    ({ path, text }) => {
      const sign = /^\s*([$€£])\s*\d/.exec(text)?.[1]
      if (sign === undefined || signs[sign]?.includes(currency)) return []
      return [
        tree.problem(
          tree.placeOf(path),
          'facility/odd',
          `"${text}" is written with ${sign}, but currency is ${currency}`,
          { hint: `write ${currency} amounts, or change currency` },
        ),
      ]
    },
  )
}
