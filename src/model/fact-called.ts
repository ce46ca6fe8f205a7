import otherNames from '../../shared/other-names.json' with { type: 'json' }
import { nearest } from './closest.ts'
import { factPaths, factSpec } from './fact-spec.ts'

const plain = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[\s._-]+/g, ' ')

const byLabel = new Map<string, string[]>()
for (const path of factPaths) {
  const label = plain(factSpec(path)?.label ?? '')
  byLabel.set(label, [...(byLabel.get(label) ?? []), path])
}

/** The path of the fact with a label, where only one has it: the manual calls facts by their labels. */
export function factCalled(name: string): string | undefined {
  if (factSpec(name)) return name
  const paths = byLabel.get(plain(name)) ?? []
  return paths.length === 1 ? paths[0] : undefined
}

/** What people call a fact that has another name, by words parted with spaces. */
const byOtherName = new Map<string, string>(
  Object.entries(otherNames.facts).map(([name, path]) => [plain(name), path]),
)

/** More names than these are no help to anyone. */
const mostListed = 3

/** A fact by its path, with what the manual calls it: paths alone look too much alike. */
function withLabel(path: string): string {
  const label = factSpec(path)?.label ?? ''
  return plain(path).endsWith(plain(label)) ? `"${path}"` : `"${path}" (${label})`
}

/** What to ask whoever named a fact that there is not: the nearest path, or those with all its words. */
export function factMeant(name: string): string {
  const other = byOtherName.get(plain(name))
  if (other !== undefined) return `did you mean ${withLabel(other)}?`
  const near = nearest(name, factPaths)
  const same = byLabel.get(plain(name)) ?? []
  const words = plain(name)
    .split(' ')
    .filter((word) => word.length > 2)
  const within = factPaths.filter((path) => {
    const text = `${plain(path)} ${plain(factSpec(path)?.label ?? '')}`
    return words.length > 0 && words.every((word) => text.includes(word))
  })
  const found = [...same, ...within].slice(0, mostListed)
  if (near !== undefined && same.length === 0) return `did you mean ${withLabel(near)}?`
  return found.length > 0
    ? `did you mean ${found.map(withLabel).join(' or ')}?`
    : 'write the path of an entry of this file, such as cushion.depth.found'
}
