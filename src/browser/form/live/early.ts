import { printed } from '../../../compose/context.ts'
import type { Engine } from '../../../compute/engine/engine.ts'
import { aTenthLess } from '../../../compute/sensitivity.ts'
import type { Fact } from '../../../model/figure.ts'
import { entryOf } from './entry-of.ts'
import type { Shown } from './worked.ts'

/** Why work begins so early: the longest part of it, and the answer that this part hangs on most. */
export type Early = {
  readonly part: 'water' | 'harrow'
  /** How long it takes. */
  readonly time: string
  readonly entry: string
  readonly label: string
  readonly value: string
}

/** Nobody expects to begin before this, s from midnight, however early it is light. */
const unusual = 5 * 3600

/** Each part of the morning, from when to when. */
const parts = {
  water: { from: 'clock.water', to: 'clock.look' },
  harrow: { from: 'clock.harrow', to: 'clock.water' },
} as const

/** Length of a part, s; undefined where a value makes no sense. */
function lengthOf(part: Early['part'], engine: Engine): number | undefined {
  const both = engine.siOfAll(parts[part])
  return both && both.to - both.from
}

/** By how much a part changes with an answer, s. */
function changeOf(part: Early['part'], engine: Engine, fact: Fact): number {
  const [before, after] = [lengthOf(part, engine), lengthOf(part, aTenthLess(engine, fact))]
  return before === undefined || after === undefined ? 0 : Math.abs(after - before)
}

/** Answers that the start of work rests on; how the work is done is settled, and no answer. */
const answersBehind = (engine: Engine): readonly Fact[] => {
  const behind: ReadonlySet<string> = engine.restsOn('clock.start')
  return [...engine.facts.values()].filter(
    ({ path, kind }) => behind.has(path) && kind !== 'count' && !path.startsWith('practice.'),
  )
}

/** Undefined where work begins by daylight and not before five, or for no reason that is an answer. */
export function earlyStart({ computed, facility }: Shown): Early | undefined {
  const { engine } = computed
  const start = engine.si('clock.start')
  const light = engine.si('daylight.dawn') ?? 0
  if (start === undefined || start >= Math.max(unusual, light)) return undefined
  const [water, harrow] = [lengthOf('water', engine) ?? 0, lengthOf('harrow', engine) ?? 0]
  const part = water >= harrow ? 'water' : 'harrow'
  const [first] = answersBehind(engine)
    .map((fact) => ({ fact, change: changeOf(part, engine, fact) }))
    .filter((c) => c.change > 0)
    .sort((a, b) => b.change - a.change || a.fact.path.localeCompare(b.fact.path, 'en'))
  if (!first) return undefined
  const { path, label, text } = first.fact
  return {
    part,
    time: printed(Math.max(water, harrow), 'duration', computed),
    entry: entryOf(path, facility.file),
    label,
    value: text,
  }
}
