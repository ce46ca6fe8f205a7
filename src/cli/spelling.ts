import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import path from 'node:path'
import nspell from 'nspell'
import writing from '../../shared/writing.json' with { type: 'json' }
import type { Problem } from '../model/problem.ts'
import type { Library, Sourced } from '../validate/check-library.ts'
import { plainText, textsOf } from '../validate/texts-of.ts'

/** A file of the dictionary's package. */
const dictionaryFile = (name: string): Buffer =>
  readFileSync(
    path.join(path.dirname(createRequire(import.meta.url).resolve('dictionary-en')), name),
  )

/**
 * Words of the library that the dictionary and the list of trade words do not know. The dictionary
 * is read from disk, so this is not part of the core.
 */
export function checkSpelling(library: Library): readonly Problem[] {
  const spell = nspell(dictionaryFile('index.aff'), dictionaryFile('index.dic'))
  for (const word of writing.accepted) spell.add(word)
  const known = new Map<string, boolean>()
  const isRight = (word: string): boolean => {
    const found =
      known.get(word) ??
      (spell.correct(word) ||
        spell.correct(word.replace(/['’]s$/, '')) ||
        word.split('-').every((part) => spell.correct(part)))
    known.set(word, found)
    return found
  }
  const items = [
    ...library.procedures,
    ...library.chapters,
    ...library.cautions,
    ...library.symptoms,
    ...library.chooser,
    ...library.terms,
    ...library.findings,
    ...library.schedules,
    ...library.reckoners,
    ...library.sections,
    ...library.forms,
    ...library.form,
    ...library.cards,
    ...library.search,
    ...library.today,
    ...library.worksheets,
    library.wordsFile,
  ] as readonly Sourced<unknown>[]
  return items.flatMap((item) =>
    textsOf(item).flatMap(({ text, path }) =>
      [...new Set(plainText(text).match(/[A-Za-z][A-Za-z'’-]*[A-Za-z]/g) ?? [])]
        .filter((word) => !isRight(word))
        .map((word) =>
          item.tree.problem(
            item.tree.textPlaceOf(path, word),
            'text/style',
            `"${word}" may be misspelt`,
            { hint: 'correct it, or add it to shared/writing.json', severity: 'warning' },
          ),
        ),
    ),
  )
}
