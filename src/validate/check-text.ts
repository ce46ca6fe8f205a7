import { didYouMean, didYouMeanOneOf } from '../model/closest.ts'
import { anyBraces } from '../model/placeholders.ts'
import type { Problem } from '../model/problem.ts'
import type { Path } from '../read/read-yaml.ts'
import type { Sourced } from './check-library.ts'
import { textsIn } from './texts-of.ts'
import { typedQuantity } from './typed-quantity.ts'

export type NameTargets = {
  /** Every figure id and fact path there can be, for any facility. */
  readonly quantities: ReadonlySet<string>
  /** Procedures by id, with their titles. */
  readonly procedures: ReadonlyMap<string, string>
}

const html = /<\/?[a-zA-Z!][^>]*>?/
const link = /\]\(([^)\s]*)\)/g

function checkName(
  item: Sourced<unknown>,
  path: Path,
  shown: string,
  name: string,
  targets: NameTargets,
): Problem[] {
  if (targets.quantities.has(name)) return []
  return [
    item.tree.problem(
      item.tree.textPlaceOf(path, shown),
      'text/unknown-figure',
      `there is no figure or fact "${name}"`,
      { hint: didYouMean(name, [...targets.quantities]) ?? 'list all with "explain"' },
    ),
  ]
}

function checkString(
  item: Sourced<unknown>,
  path: Path,
  text: string,
  targets: NameTargets,
): Problem[] {
  const at = (part: string) => item.tree.textPlaceOf(path, part)
  const problems = [...text.matchAll(anyBraces)].flatMap((m) =>
    checkName(item, path, m[0], m[1] ?? '', targets),
  )
  const tag = html.exec(text)
  if (tag)
    problems.push(
      item.tree.problem(
        at(tag[0]),
        'text/html',
        `HTML is not allowed in text: ${tag[0].slice(0, 40)}`,
        { hint: 'write Markdown' },
      ),
    )
  for (const m of text.matchAll(link)) {
    const target = m[1] ?? ''
    const [scheme, id = ''] = target.split(':')
    if (scheme === 'procedure' && !targets.procedures.has(id))
      problems.push(
        item.tree.problem(at(target), 'text/link', `there is no procedure "${id}"`, {
          hint: didYouMeanOneOf(id, [...targets.procedures.keys()]),
        }),
      )
    else if (scheme !== 'procedure')
      problems.push(
        item.tree.problem(at(target || '('), 'text/link', `a link to "${target}"`, {
          hint: 'link to a procedure as [words](procedure:id)',
        }),
      )
  }
  const typed = typedQuantity(text)
  if (typed !== undefined)
    problems.push(
      item.tree.problem(at(typed), 'text/typed-number', `a quantity is typed in text: "${typed}"`, {
        hint: 'name a figure or fact instead, such as {washout.volume}',
        severity: 'warning',
      }),
    )
  return problems
}

/**
 * Checks all words of an item: figures named must exist, links must lead somewhere, no HTML, no
 * typed quantities.
 */
export const checkText = (items: readonly Sourced<unknown>[], targets: NameTargets): Problem[] =>
  items.flatMap((item) =>
    textsIn(item.schema, item.value, item.path).flatMap(({ is, path, text }) =>
      is === 'quantity'
        ? checkName(item, path, text, text, targets)
        : checkString(item, path, text, targets),
    ),
  )
