import { inputsOf } from '../inputs-of.ts'
import { type Binding, type Use, useIdOf } from '../uses/use.ts'

/** Paths of facts that something rests on, directly or through figures. */
export type Trace = {
  /** Of any of the use's figures: what has to be worked out again when a fact changes. */
  readonly ofUse: (use: Use<string>) => ReadonlySet<string>
  /** Of one figure, by its true inputs; empty for an id that is not known. */
  readonly ofFigure: (id: string) => ReadonlySet<string>
}

/** Fills a set for each id once. */
function remembering(
  fill: (id: string, paths: Set<string>) => void,
): (id: string) => ReadonlySet<string> {
  const found = new Map<string, ReadonlySet<string>>()
  return (id) => {
    const known = found.get(id)
    if (known) return known
    const paths = new Set<string>()
    // Stored before it is filled, so that a circle among the uses ends here; working reports it.
    found.set(id, paths)
    fill(id, paths)
    return paths
  }
}

/** Follows bindings down to the facts; each use and each figure is followed once. */
export function createTrace(uses: ReadonlyMap<string, Use<string>>): Trace {
  const add = (
    binding: Binding | undefined,
    paths: Set<string>,
    inner: (figure: string) => ReadonlySet<string>,
  ): void => {
    if (binding && 'fact' in binding) paths.add(binding.fact)
    if (binding && 'figure' in binding) for (const path of inner(binding.figure)) paths.add(path)
  }
  const ofUseId = remembering((id, paths) => {
    for (const binding of Object.values(uses.get(id)?.bindings ?? {}))
      add(binding, paths, (figure) => ofUseId(useIdOf(figure)))
  })
  const ofFigure = remembering((id, paths) => {
    const use = uses.get(useIdOf(id))
    const output = id.slice(useIdOf(id).length + 1)
    // A use may be worked by a shorter calculation where a machine is missing: it lacks some outputs.
    if (!use || !(output in use.calculation.outputs)) return
    for (const name of inputsOf(use.calculation, output)) add(use.bindings[name], paths, ofFigure)
  })
  return { ofUse: (use) => ofUseId(use.id), ofFigure }
}
