import type { Engine } from '../../compute/engine/engine.ts'
import { ofReadings } from '../../compute/uses/readings.ts'
import { type Binding, type Use, useIdOf } from '../../compute/uses/use.ts'

type Uses = Engine['uses']

const bindingsOf = (use: Use): readonly Binding[] => Object.values(use.bindings)

/** Ids of the uses for which it holds, and of all that take figures of these, however far. */
function withTakers(uses: Uses, first: (use: Use) => boolean): ReadonlySet<string> {
  const found = new Set<string>(uses.filter(first).map(({ id }) => id))
  const takes = (use: Use): boolean =>
    bindingsOf(use).some((b) => 'figure' in b && found.has(useIdOf(b.figure)))
  for (let before = -1; before < found.size; ) {
    before = found.size
    for (const use of uses) if (takes(use)) found.add(use.id)
  }
  return found
}

/** Uses that work with surveys and records, or take figures of such. */
export const usesOfReadings = (uses: Uses): ReadonlySet<string> =>
  withTakers(uses, ({ calculation }) => ofReadings.has(calculation.id))

/**
 * Uses of which a figure may change when these facts do. All figures of a use lose their number
 * when one of its inputs leaves its range, those too whose formula does not name it.
 */
export const usesOfFacts = (uses: Uses, paths: ReadonlySet<string>): ReadonlySet<string> =>
  withTakers(uses, (use) => bindingsOf(use).some((b) => 'fact' in b && paths.has(b.fact)))

/** These uses, and all whose figures they take. */
export function withGivers(uses: Uses, ids: ReadonlySet<string>): readonly Use[] {
  const byId = new Map<string, Use>(uses.map((use) => [use.id, use]))
  const found = new Set<Use>()
  const add = (id: string): void => {
    const use = byId.get(id)
    if (!use || found.has(use)) return
    found.add(use)
    for (const b of bindingsOf(use)) if ('figure' in b) add(useIdOf(b.figure))
  }
  for (const id of ids) add(id)
  return [...found]
}
