import { type Use, useIdOf } from '../uses/use.ts'

/** Paths of all facts that a use rests on, directly or through other figures. */
export type Trace = (use: Use<string>) => ReadonlySet<string>

/** Follows bindings down to the facts; each use is followed once. */
export function createTrace(uses: ReadonlyMap<string, Use<string>>): Trace {
  const found = new Map<string, ReadonlySet<string>>()
  const trace: Trace = (use) => {
    const known = found.get(use.id)
    if (known) return known
    const paths = new Set<string>()
    // Stored before it is filled, so that a circle among the uses ends here; working reports it.
    found.set(use.id, paths)
    for (const binding of Object.values(use.bindings)) {
      if ('fact' in binding) paths.add(binding.fact)
      const inner = 'figure' in binding ? uses.get(useIdOf(binding.figure)) : undefined
      if (inner) for (const path of trace(inner)) paths.add(path)
    }
    return paths
  }
  return trace
}
