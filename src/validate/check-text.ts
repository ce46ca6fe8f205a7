import { closest } from '../model/closest.ts'
import { anyBraces } from '../model/placeholders.ts'
import type { Problem } from '../model/problem.ts'
import type { Path } from '../read/read-yaml.ts'
import type { Sourced } from './check-library.ts'

/** Entries that hold ids and names, not words for readers. */
export const notText = new Set([
  'id',
  'section',
  'method',
  'methods',
  'procedure',
  'figure',
  'fact',
  'up-to',
  'source',
  'sources',
  'cautions',
  'symptoms',
  'reckoners',
  'reckoner',
  'next',
  'drawing',
  'drawings',
  'references',
  'signal',
  'severity',
  'when',
  'can',
  'place',
  'us',
  'metric',
  'from',
  'first',
  'except',
  'each',
  'phones',
])

/** Of a condition, only these are figures; its other entries have lists of their own. */
const conditionKeys = new Set(['above-zero', 'zero'])

/** Entries under these names are figures to be named, not text. */
const figureKeys = new Set([
  'figure',
  'figures',
  'fact',
  'up-to',
  'needs',
  'lacks',
  'on',
  'after',
  ...conditionKeys,
])

export type NameTargets = {
  /** Every figure id and fact path there can be, for any facility. */
  readonly quantities: ReadonlySet<string>
  readonly procedures: ReadonlySet<string>
}

const html = /<\/?[a-zA-Z!][^>]*>?/
const link = /\]\(([^)\s]*)\)/g
const typedNumber =
  /(?<![\w.{-])\d+(?:[.,/]\d+)*\s?(?:in|inch|inches|ft|feet|foot|yd|mi|miles?|mm|cm|m|km|gal|gallons?|L|liters?|lb|pounds?|tons?|kg|mph|psi|%|percent|h|hours?|min|minutes?|seconds?)\b(?!\w)/

function checkName(
  item: Sourced<unknown>,
  path: Path,
  shown: string,
  name: string,
  targets: NameTargets,
): Problem[] {
  if (targets.quantities.has(name)) return []
  const near = closest(name, [...targets.quantities])
  return [
    item.tree.problem(
      item.tree.textPlaceOf(path, shown),
      'text/unknown-figure',
      `there is no figure or fact "${name}"`,
      { hint: near ? `did you mean "${near}"?` : 'list all with "explain"' },
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
      problems.push(item.tree.problem(at(target), 'text/link', `there is no procedure "${id}"`))
    else if (scheme !== 'procedure')
      problems.push(
        item.tree.problem(at(target || '('), 'text/link', `a link to "${target}"`, {
          hint: 'link to a procedure as [words](procedure:id)',
        }),
      )
  }
  const typed = typedNumber.exec(text)
  if (typed)
    problems.push(
      item.tree.problem(
        at(typed[0]),
        'text/typed-number',
        `a quantity is typed in text: "${typed[0]}"`,
        { hint: 'name a figure or fact instead, such as {washout.volume}', severity: 'warning' },
      ),
    )
  return problems
}

function walk(
  item: Sourced<unknown>,
  value: unknown,
  path: Path,
  key: string,
  targets: NameTargets,
): Problem[] {
  if (typeof value === 'string') {
    if (figureKeys.has(key)) return checkName(item, path, value, value, targets)
    return notText.has(key) ? [] : checkString(item, path, value, targets)
  }
  if (Array.isArray(value))
    return value.flatMap((v, i) => walk(item, v, [...path, i], key, targets))
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value)
    .filter(([k]) => key !== 'when' || conditionKeys.has(k))
    .flatMap(([k, v]) => walk(item, v, [...path, k], k, targets))
}

/**
 * Checks all words of an item: figures named must exist, links must lead somewhere, no HTML, no
 * typed quantities.
 */
export const checkText = (items: readonly Sourced<unknown>[], targets: NameTargets): Problem[] =>
  items.flatMap((item) => walk(item, item.value, item.path, '', targets))
