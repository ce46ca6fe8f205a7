import { didYouMean } from '../../model/closest.ts'
import type { Problem } from '../../model/problem.ts'
import type { Sourced } from '../../validate/check-library.ts'
import type { FindingText } from '../../validate/schemas/library.ts'
import { type FindingRule, findingRules } from './rules.ts'

/** Words that no rule asks for would never be read. */
function withoutRule(
  { value, tree, path }: Sourced<FindingText>,
  rules: readonly FindingRule[],
): Problem[] {
  const ids = rules.map((r) => r.id)
  if (ids.includes(value.id)) return []
  return [
    tree.problem(
      tree.placeOf([...path, 'id']),
      'ref/missing',
      `no rule leads to the finding "${value.id}"`,
      {
        hint: didYouMean(value.id, ids) ?? 'its rule stands in src/compute/findings/rules.ts',
      },
    ),
  ]
}

/** What a rule finds must be said; the problem stands at the head of the list that lacks it. */
function withoutWords({ id }: FindingRule, texts: readonly Sourced<FindingText>[]): Problem[] {
  const tree = texts[0]?.tree
  if (!tree || texts.some((t) => t.value.id === id)) return []
  return [
    tree.problem(
      tree.keyPlaceOf(['findings']),
      'schema/missing',
      `there are no words for the finding "${id}"`,
      { hint: 'add an entry with this id, or take out its rule in src/compute/findings/rules.ts' },
    ),
  ]
}

/**
 * A finding is a rule and its words: each must have the other.
 * @param texts The words of all findings, as they stand in the library.
 */
export const findingWordProblems = (
  texts: readonly Sourced<FindingText>[],
  rules: readonly FindingRule[] = findingRules,
): Problem[] => [
  ...texts.flatMap((text) => withoutRule(text, rules)),
  ...rules.flatMap((rule) => withoutWords(rule, texts)),
]
