import { anyBraces } from '../../model/placeholders.ts'
import type { Problem } from '../../model/problem.ts'
import type { Path, SourceTree } from '../../read/read-yaml.ts'
import type { ItemText } from '../texts-of.ts'

const link = /\]\(([^)\s]*)\)/g

/** Figures and links of a text as they are written: `{grade.time}`, `(procedure:seal)`. */
const namesOf = (text: string): ReadonlySet<string> =>
  new Set([
    ...[...text.matchAll(anyBraces)].map((m) => m[0]),
    ...[...text.matchAll(link)].map((m) => `(${m[1] ?? ''})`),
  ])

/** A translated text names the same figures and leads to the same procedures as the first. */
export function checkNames(
  base: ItemText,
  text: string,
  path: Path,
  language: SourceTree,
): readonly Problem[] {
  const [wanted, given] = [namesOf(base.text), namesOf(text)]
  const lost = [...wanted].filter((name) => !given.has(name))
  const added = [...given].filter((name) => !wanted.has(name))
  return [
    ...lost.map((name) =>
      language.problem(language.placeOf(path), 'language/names', `${name} is missing`, {
        hint: `the text says: ${base.text.split('\n')[0] ?? ''}`,
      }),
    ),
    ...added.map((name) =>
      language.problem(
        language.textPlaceOf(path, name),
        'language/names',
        `${name} is not in the text that this one stands for`,
        wanted.size === 0 ? {} : { hint: `expected: ${[...wanted].join(', ')}` },
      ),
    ),
  ]
}
