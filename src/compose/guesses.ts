import type { Engine } from '../compute/engine/engine.ts'
import { aTenthLess, unmeasured } from '../compute/sensitivity.ts'
import { isFigureId, quantityIdOf } from '../compute/uses/ids.ts'
import type { Capability } from '../model/capability.ts'
import { capabilityOf, type FactPath, isFactPath } from '../model/fact-spec.ts'
import type { Fact } from '../model/figure.ts'
import type { Guess } from '../model/manual/finding.ts'

/** So many usual values are named: more would be read by nobody. */
const most = 3

/** A usual value that moves a figure by less than this share when it is a tenth off does not matter. */
const matters = 0.01

/** How the work is done is settled, not found out. */
const isSetting = ({ path }: Fact): boolean => path.startsWith('practice.')

/**
 * Finds the usual values behind what is said of figures and facts, those that are named themselves
 * first, then those that move the figures most; three at most.
 * @returns A function of the names; what it works out for one text it keeps for the next.
 */
export function guessesBehind(
  engine: Engine,
  work: Readonly<Record<Capability, string>>,
): (names: readonly string[]) => readonly Guess[] {
  const usual = new Map<FactPath, Fact>(
    unmeasured(engine)
      .filter((f) => !isSetting(f))
      .map((f) => [f.path, f]),
  )
  const moved = new Map<FactPath, Engine>()
  const withLess = (fact: Fact): Engine => {
    const known = moved.get(fact.path) ?? aTenthLess(engine, fact)
    moved.set(fact.path, known)
    return known
  }
  /** Of a machine it is said too which work it does. */
  const guessOf = ({ path, label, text }: Fact): Guess => {
    const of = capabilityOf(path)
    return { path, label: of ? `${label}, ${work[of]}` : label, text }
  }
  return (names) => {
    const ids = [...new Set(names.map(quantityIdOf))]
    const named = ids.flatMap((id) => (isFactPath(id) ? (usual.get(id) ?? []) : []))
    const figures = ids.filter(isFigureId)
    const share = (fact: Fact): number => {
      const changes = figures.map((id) => {
        const before = engine.si(id)
        const after = engine.restsOn(id).has(fact.path) ? withLess(fact).si(id) : before
        return before && after !== undefined ? Math.abs(after / before - 1) : 0
      })
      return Math.max(0, ...changes)
    }
    const behind = [...usual.values()]
      .filter((f) => !named.includes(f))
      .map((fact) => ({ fact, share: share(fact) }))
      .filter((m) => m.share >= matters)
      .sort((a, b) => b.share - a.share || a.fact.path.localeCompare(b.fact.path, 'en'))
    return [...named, ...behind.map((m) => m.fact)].slice(0, most).map(guessOf)
  }
}
