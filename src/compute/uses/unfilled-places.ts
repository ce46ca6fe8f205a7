import { didYouMean } from '../../model/closest.ts'
import { anyBraces } from '../../model/placeholders.ts'
import type { Problem } from '../../model/problem.ts'
import { textsOf } from '../../validate/texts-of.ts'
import type { Calculation } from '../calculation.ts'
import type { WordFile } from './declared-worksheets.ts'

/** What the engine fills in where no calculation says why there is no number. */
const ofNoNumber: Readonly<Record<string, readonly string[]>> = {
  unknown: ['input'],
  outside: ['input', 'value', 'low', 'high'],
}

/**
 * Places in words, `{name}`, that nothing fills: they would be printed as they stand.
 * @param calculations By id; each fills in what it declares as `told`.
 */
export const unfilledPlaces = (
  file: WordFile,
  calculations: ReadonlyMap<string, Calculation>,
): Problem[] =>
  textsOf(file).flatMap(({ text, path }) => {
    const [group, entry = ''] = path.map(String)
    // Words that no calculation asks for are reported already.
    if (group === 'calculations' && !calculations.has(entry)) return []
    const filled =
      group === 'calculations'
        ? Object.keys(calculations.get(entry)?.told ?? {})
        : group === 'no-number'
          ? (ofNoNumber[entry] ?? [])
          : []
    return [...text.matchAll(anyBraces)].flatMap(([shown, name = '']) => {
      if (filled.includes(name)) return []
      const known = filled.map((n) => `{${n}}`)
      return [
        file.tree.problem(
          file.tree.textPlaceOf(path, shown),
          'text/unknown-figure',
          `nothing stands for "${shown}" here`,
          { hint: didYouMean(shown, known) ?? `it may name: ${known.join(', ') || 'nothing'}` },
        ),
      ]
    })
  })
