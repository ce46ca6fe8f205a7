import type { Problem } from '../model/problem.ts'
import type { SourceTree } from '../read/read-yaml.ts'
import type { Library, Sourced } from './check-library.ts'
import { checkSchema } from './check-schema.ts'
import { notSaid } from './schemas/library.ts'
import { plainText, textsOf } from './texts-of.ts'

type Searched = { readonly pattern: RegExp; readonly say: string }

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')

/** Whole words, however they are spaced, with either apostrophe. */
const patternOf = (words: string): RegExp =>
  new RegExp(`\\b${escaped(words).replace(/\s+/g, '\\s+').replace(/'/g, "['’]")}\\b`, 'i')

function notSaidIn(item: Sourced<unknown>, list: readonly Searched[]): Problem[] {
  return textsOf(item).flatMap(({ text, path }) =>
    list.flatMap(({ pattern, say }) => {
      const found = pattern.exec(plainText(text))?.[0]
      return found === undefined
        ? []
        : [
            item.tree.problem(
              item.tree.textPlaceOf(path, found),
              'text/style',
              `nobody would say "${found}"`,
              { hint: `rather: ${say}`, severity: 'warning' },
            ),
          ]
    }),
  )
}

/**
 * Words of the library that its readers would not say, with what to say instead.
 * @param tree content/not-said.yaml: the list, of the library's own language alone.
 */
export function checkNotSaid(library: Library, tree: SourceTree): readonly Problem[] {
  const { value, problems } = checkSchema(tree, notSaid)
  if (!value) return problems
  const list = Object.entries(value.words).map(([not, say]) => ({ pattern: patternOf(not), say }))
  const { facts: _facts, words: _words, wordsFile, ...lists } = library
  const items: readonly Sourced<unknown>[] = [...Object.values(lists).flat(), wordsFile]
  return items.flatMap((item) => notSaidIn(item, list))
}
