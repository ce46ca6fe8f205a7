import { didYouMean } from '../../model/closest.ts'
import type { Problem, Result } from '../../model/problem.ts'
import type { Path, SourceTree } from '../../read/read-yaml.ts'
import { type Replacement, withTexts } from '../../read/with-texts.ts'
import { type ItemText, textsIn } from '../texts-of.ts'
import { checkNames } from './check-names.ts'
import {
  countTexts,
  groupTexts,
  isGroup,
  isList,
  type TextGroup,
  type Texts,
} from './text-groups.ts'

/** A file of the library, and the file that says its texts in another language. */
type Pair = { readonly base: SourceTree; readonly language: SourceTree }

/** What a part of the language's file gives. */
type Given = { readonly texts: readonly Replacement[]; readonly problems: readonly Problem[] }

const fault = ({ language }: Pair, ...what: Parameters<SourceTree['problem']>): Given => ({
  texts: [],
  problems: [language.problem(...what)],
})

const shown = (path: Path): string => path.join('.')

/** At most a line of names. */
const listed = (group: TextGroup): string => [...group.keys()].slice(0, 12).join(', ')

function missing(pair: Pair, wanted: Texts, path: Path): Given {
  const { base, language } = pair
  const parent = path.length > 1 ? language.keyPlaceOf(path.slice(0, -1)) : language.placeOf([])
  const at = isGroup(wanted) ? undefined : base.placeOf(wanted.path)
  const hint =
    isGroup(wanted) || !at
      ? `texts in it: ${countTexts(wanted)}`
      : `${at.file}:${at.line} says: ${wanted.text.split('\n')[0] ?? ''}`
  return fault(pair, parent, 'schema/missing', `"${shown(path)}" is missing`, { hint })
}

function givenText(pair: Pair, wanted: ItemText, value: unknown, path: Path): Given {
  const { language } = pair
  if (typeof value !== 'string')
    return fault(pair, language.placeOf(path), 'schema/type', 'text was expected here', {
      hint: 'a text that looks like a number stands between quotes',
    })
  return {
    texts: [{ path: wanted.path, text: value, from: path }],
    problems: checkNames(wanted, value, path, language),
  }
}

/** An entry that stands for no text of the library. */
function surplus(pair: Pair, group: TextGroup, path: Path): Given {
  const { language } = pair
  const step = path.at(-1) ?? ''
  const place = typeof step === 'number' ? language.placeOf(path) : language.keyPlaceOf(path)
  return fault(pair, place, 'schema/unknown-key', `"${shown(path)}" stands for no text`, {
    hint: didYouMean(String(step), [...group.keys()].map(String)) ?? `texts here: ${listed(group)}`,
  })
}

const wrongShape = (pair: Pair, group: TextGroup, path: Path): Given =>
  isList(group)
    ? fault(pair, pair.language.placeOf(path), 'schema/type', 'a list was expected here', {
        hint: 'in the order of the library; an entry without texts is written {}',
      })
    : fault(pair, pair.language.placeOf(path), 'schema/type', 'named entries were expected here', {
        hint: `texts here: ${listed(group)}`,
      })

const entriesOf = (value: object): readonly (readonly [string | number, unknown])[] =>
  Array.isArray(value) ? [...value.entries()] : Object.entries(value)

/** What stands in a list in place of an entry without texts. */
const isNothing = (value: unknown): boolean =>
  value === null || (typeof value === 'object' && Object.keys(value).length === 0)

function compare(pair: Pair, wanted: Texts, value: unknown, path: Path): Given {
  if (value === undefined || value === null) return missing(pair, wanted, path)
  if (!isGroup(wanted)) return givenText(pair, wanted, value, path)
  if (typeof value !== 'object' || Array.isArray(value) !== isList(wanted))
    return wrongShape(pair, wanted, path)
  const entries = new Map(entriesOf(value))
  const parts = [
    ...[...entries]
      .filter(([step, entry]) => !wanted.has(step) && !isNothing(entry))
      .map(([step]) => surplus(pair, wanted, [...path, step])),
    ...[...wanted].map(([step, texts]) => compare(pair, texts, entries.get(step), [...path, step])),
  ]
  return {
    texts: parts.flatMap((p) => p.texts),
    problems: parts.flatMap((p) => p.problems),
  }
}

/**
 * A file of the library in another language: its structure with the texts of the language's file.
 * @param schema Says which strings of the file are texts.
 */
export function translateTree(
  base: SourceTree,
  schema: unknown,
  language: SourceTree,
): Result<SourceTree> {
  const wanted = groupTexts(textsIn(schema, base.data).filter((t) => t.is === 'words'))
  const { texts, problems } = compare({ base, language }, wanted, language.data, [])
  return { value: withTexts(base, language, texts), problems }
}
