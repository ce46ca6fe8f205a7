import type { Fact } from '../model/figure.ts'
import type { Engine } from './engine/engine.ts'
import type { FigureId } from './uses/ids.ts'

/** How much the figures of a manual move when a value that nobody has measured moves by a tenth. */
export type Sensitivity = {
  readonly fact: Fact
  /** Figures that move at all. */
  readonly figures: number
  /** Sum of their relative changes, each counted as no more than its whole. */
  readonly movement: number
  /**
   * The figure that moves most, and by what share; undefined where none moves. One near zero, such as
   * time to spare, moves by more than its whole at a touch: it is named only where no other moves.
   */
  readonly most: { readonly figure: FigureId; readonly share: number } | undefined
}

/** The step: a tenth more, and a tenth less. */
const step = 0.1

/** A larger share says that the figure is near zero, not that much hangs on the value. */
const believable = 1

/** Decibels are a scale of ratios: a tenth more sound is less than half a decibel, not nine. */
const stepped = ({ si, kind }: Fact, factor: number): number =>
  kind === 'soundLevel' ? si + 10 * Math.log10(factor) : si * factor

/** The same facility where a value is a tenth less. */
export const aTenthLess = (engine: Engine, fact: Fact): Engine =>
  engine.vary(new Map([[fact.path, stepped(fact, 1 - step)]]))

/** How the figures that rest on a value move with it; no others are computed again. */
export function movementOf(engine: Engine, fact: Fact): Sensitivity {
  const ids = engine.figuresOn(fact.path)
  const changes = new Map<FigureId, number>()
  for (const factor of [1 + step, 1 - step]) {
    const other = engine.vary(new Map([[fact.path, stepped(fact, factor)]]))
    for (const id of ids) {
      const [before, after] = [engine.si(id), other.si(id)]
      if (!before || after === undefined) continue
      changes.set(id, Math.max(changes.get(id) ?? 0, Math.abs(after / before - 1)))
    }
  }
  const moved = [...changes].filter(([, share]) => share > 1e-9).sort((a, b) => b[1] - a[1])
  const most = moved.find(([, share]) => share <= believable) ?? moved[0]
  return {
    fact,
    figures: moved.length,
    movement: moved.reduce((sum, [, s]) => sum + Math.min(s, believable), 0),
    most: most && { figure: most[0], share: most[1] },
  }
}

/** The values that stand in for what nobody has measured. */
export const unmeasured = (engine: Engine): readonly Fact[] =>
  [...engine.facts.values()].filter((f) => f.provenance.kind === 'typical')

/**
 * Ranks the values that stand in for what nobody has measured by how much the manual's figures move
 * with them, the most telling first.
 */
export function rankUnmeasured(engine: Engine): readonly Sensitivity[] {
  return unmeasured(engine)
    .map((f) => movementOf(engine, f))
    .sort((a, b) => b.movement - a.movement || a.fact.path.localeCompare(b.fact.path, 'en'))
}
