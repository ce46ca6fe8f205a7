import type { DayFact } from '../../model/manual/today.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import type { Locale } from '../../model/quantity/format-quantity.ts'
import type { DayFile } from '../../model/today.ts'
import { type DayEngine, dayEngine, localeOf } from './day-engine.ts'
import type { AllPutIn } from './kept.ts'
import { type Read, readField } from './read-field.ts'

/** The numbers of a day: what was put in, and what comes of it. */
export type Day = {
  readonly file: DayFile
  readonly locale: Locale
  readonly facts: ReadonlyMap<string, DayFact>
  /** The manual's own numbers. */
  readonly printed: DayEngine
  /** The numbers with what was put in. */
  readonly engine: () => DayEngine
  readonly putIn: () => AllPutIn
  /** Paths of facts that were changed, with what is right among it. */
  readonly changed: () => ReadonlyMap<string, number>
  /** What is wrong with a text that was put in. */
  readonly fault: (path: string) => Exclude<Read, { ok: true }>['why'] | undefined
  /** Labels of what is wrong and a figure rests on. */
  readonly waitsFor: (name: string) => readonly string[]
  /** A fact as it stands now, in words. */
  readonly text: (path: string) => string
  readonly put: (name: string, text: string) => void
  /** Takes one back, or all. */
  readonly undo: (name?: string) => void
  readonly putAll: (all: AllPutIn) => void
  /** Is called after every change. */
  readonly follow: (heard: () => void) => void
}

/** What all that was put in comes to. */
function reading(file: DayFile, facts: Day['facts'], printed: DayEngine, all: AllPutIn) {
  const changed = new Map<string, number>()
  const faults = new Map<string, Exclude<Read, { ok: true }>['why']>()
  for (const [path, { text }] of all) {
    const fact = facts.get(path)
    if (!fact) continue
    const said = printed.facts.get(path)?.si
    const read = readField(text, fact, file.sums.system, (said ?? 0) - 6 * 3600)
    if (!read.ok) faults.set(path, read.why)
    else changed.set(path, read.si)
  }
  return { changed, faults, engine: changed.size > 0 ? printed.vary(changed) : printed }
}

/** Begins with what the manual says. */
export function startDay(file: DayFile, clock: () => number): Day {
  const facts = new Map(file.groups.flatMap((g) => g.facts.map((f) => [f.path, f] as const)))
  const printed = dayEngine(file.sums)
  const locale = localeOf(file.sums)
  const heard: (() => void)[] = []
  let all: AllPutIn = new Map()
  let now = reading(file, facts, printed, all)
  const set = (next: AllPutIn): void => {
    all = next
    now = reading(file, facts, printed, all)
    for (const hear of heard) hear()
  }
  /** What says the same as the manual is no change. */
  const isSame = (name: string, text: string): boolean => {
    const { facts: said } = printed
    const [fact, known] = [facts.get(name), said.get(name)]
    if (!fact || !known) return text.trim() === ''
    const read = readField(text, fact, file.sums.system, known.si - 6 * 3600)
    const same = formatExact(known.si, known.kind, locale, 'prose')
    return (
      text.trim() === '' ||
      text.trim() === same ||
      (read.ok && Math.abs(read.si - known.si) < 1e-12)
    )
  }
  return {
    file,
    locale,
    facts,
    printed,
    engine: () => now.engine,
    putIn: () => all,
    changed: () => now.changed,
    fault: (path) => now.faults.get(path),
    waitsFor: (name) => {
      const rests = printed.restsOn(name)
      return [...now.faults.keys()].flatMap((path) =>
        path === name || rests.has(path) ? [facts.get(path)?.label ?? ''] : [],
      )
    },
    text: (path) => {
      const fact = now.engine.facts.get(path)
      return fact ? formatExact(fact.si, fact.kind, locale, 'prose') : ''
    },
    put: (name, text) => {
      const next = new Map(all)
      if (isSame(name, text)) next.delete(name)
      else next.set(name, { text: text.trim(), at: clock() })
      set(next)
    },
    undo: (name) => {
      const next = new Map(all)
      if (name === undefined) next.clear()
      else next.delete(name)
      set(next)
    },
    putAll: set,
    follow: (hear) => {
      heard.push(hear)
    },
  }
}
