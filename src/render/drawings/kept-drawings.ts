import type { Manual } from '../../model/manual.ts'
import type { DrawingSize } from './sizes.ts'

/** Where a command keeps what was drawn; a kind is a word, and the parts are all that it depends on. */
type Keeping = {
  readonly find: (kind: string, parts: readonly string[]) => { readonly value: unknown } | undefined
  readonly keep: (kind: string, parts: readonly string[], value: unknown) => void
}

let keeping: Keeping | undefined

/** Lets drawings be taken that were drawn before of the same numbers, so that only a command does. */
export function keepDrawingsIn(where: Keeping | undefined): void {
  keeping = where
}

/** What drawings are drawn from, and what was read of it so far. */
export type Reading = {
  /** As the facility's own; what is asked of it is noted. */
  readonly manual: Manual
  readonly q: (name: string) => string
  readonly si: (name: string) => number | undefined
  readonly read: ReadonlySet<string>
  /** What stands now where something was read, as text: the same text, the same value. */
  readonly nowAt: (what: string) => string
}

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** A group that notes which of its entries are asked for; the whole where all of them are. */
function noting(group: object, note: (key: string) => unknown, all: () => void): object {
  const own = (key: string | symbol): unknown =>
    typeof key === 'string' ? note(key) : Reflect.get(group, key)
  return new Proxy(
    {},
    {
      get: (_, key) => own(key),
      has: (_, key) => {
        own(key)
        return Reflect.has(group, key)
      },
      ownKeys: () => {
        all()
        return Reflect.ownKeys(group)
      },
      getOwnPropertyDescriptor: (_, key) =>
        Reflect.has(group, key)
          ? { value: own(key), enumerable: true, configurable: true }
          : undefined,
    },
  )
}

/** Parts and their entries are noted, and no deeper: lists count as a whole. */
function notingManual(manual: Manual, read: Set<string>): Manual {
  const parts = manual as unknown as Readonly<Record<string, unknown>>
  const groups = new Map<string, object>()
  const noteWhole = (part: string): unknown => {
    read.add(part)
    return parts[part]
  }
  const entryOf = (part: string, key: string): unknown => {
    read.add(`${part}.${key}`)
    return (parts[part] as Readonly<Record<string, unknown>>)[key]
  }
  const note = (part: string): unknown => {
    const value = parts[part]
    if (!isGroup(value)) return noteWhole(part)
    const group =
      groups.get(part) ??
      noting(
        value,
        (key) => entryOf(part, key),
        () => noteWhole(part),
      )
    groups.set(part, group)
    return group
  }
  return noting(manual, note, () => {
    for (const part of Object.keys(parts)) noteWhole(part)
  }) as Manual
}

/** Numbers that JSON has no place for stand as words. */
const asText = (value: unknown): string =>
  JSON.stringify(value, (_, inner: unknown) =>
    typeof inner === 'number' && !Number.isFinite(inner) ? String(inner) : inner,
  ) ?? ''

/** `text seal.start`, `si seal.start`; `charts.rolling`, `geometry`. */
const whatPattern = /^(?:(?<how>text|si) (?<name>.*)|(?<part>[^.]*)(?:\.(?<entry>.*))?)$/s

/** Begins to read of a manual; nothing is noted where nothing is kept. */
export function readingOf(manual: Manual): Reading {
  const read = new Set<string>()
  const text = (name: string): string => {
    const found = manual.quantities[name]
    return found?.ok ? found.text : ''
  }
  const si = (name: string): number | undefined => manual.quantities[name]?.si
  const parts = manual as unknown as Readonly<Record<string, unknown>>
  const nowAt = (what: string): string => {
    const { how, name = '', part = '', entry } = whatPattern.exec(what)?.groups ?? {}
    if (how !== undefined) return how === 'text' ? text(name) : String(si(name))
    const value = parts[part]
    return asText(entry === undefined ? value : isGroup(value) ? value[entry] : undefined)
  }
  if (!keeping) return { manual, q: text, si, read, nowAt }
  return {
    manual: notingManual(manual, read),
    q: (name) => {
      read.add(`text ${name}`)
      return text(name)
    },
    si: (name) => {
      read.add(`si ${name}`)
      return si(name)
    },
    read,
    nowAt,
  }
}

/** A drawing as far as it has been drawn: in words, and laid out by size, for print and for screens. */
export type Drawn<About> = {
  readonly about: About
  readonly laid: Map<DrawingSize | `${DrawingSize} on screen`, string>
}

const kindOf = (name: string): string => `drawing-${name}`

/** All that drawings of this name have ever read, in one order: more than a single one may need. */
const readsOf = (name: string): readonly string[] | undefined =>
  keeping?.find(kindOf(name), ['reads'])?.value as readonly string[] | undefined

const partsOf = (wording: string, reads: readonly string[], nowAt: Reading['nowAt']) => [
  wording,
  ...reads.flatMap((what) => [what, nowAt(what)]),
]

/**
 * A drawing that was drawn before, where all that it was drawn from is the same now: whatever else
 * has changed, it would read the same and come out the same.
 * @param wording All words that it is given.
 */
export function drawnBefore<About>(
  name: string,
  wording: string,
  { nowAt }: Reading,
): Drawn<About> | undefined {
  const reads = readsOf(name)
  if (!reads) return undefined
  const found = keeping?.find(kindOf(name), partsOf(wording, reads, nowAt))
  return found && (found.value as Drawn<About>)
}

/** Keeps a drawing with all that it was drawn from. */
export function keepDrawn(
  name: string,
  wording: string,
  { read, nowAt }: Reading,
  drawn: Drawn<unknown>,
): void {
  const before = readsOf(name)
  const reads = [...new Set([...(before ?? []), ...read])].sort()
  if (reads.length !== before?.length) keeping?.keep(kindOf(name), ['reads'], reads)
  keeping?.keep(kindOf(name), partsOf(wording, reads, nowAt), drawn)
}
