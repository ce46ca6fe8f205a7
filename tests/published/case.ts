import { expect } from 'vitest'
import { toUnit } from '../../src/model/quantity/format-quantity.ts'

/**
 * A check against something outside the project.
 *
 * Authority: `public` for a public body or a standard, `book` for a book, a journal or a library of
 * others that is named, `arithmetic` for own sums and for pages without standing, `memory` for what
 * is printed somewhere but was not looked up. Only the first two are cited; the last is not counted.
 */
export type Case = {
  readonly id: string
  readonly topic: string
  /** Which of the runners works it out. */
  readonly fn: string
  /** What of the program it checks: the id of a calculation, or `fact` and the path of a fact. */
  readonly checks: string
  readonly formula?: string
  readonly inputs: Readonly<Record<string, unknown>>
  readonly expected: unknown
  readonly tolerance: unknown
  readonly tolerance_why: string
  readonly source: string
  /** Table, example, clause or page in the source. */
  readonly where?: string
  /** Where the printed value was found, if not in the source itself. */
  readonly quoted_by?: string
  readonly authority: 'public' | 'book' | 'arithmetic' | 'memory'
}

export type Answers = Readonly<
  Record<string, number | string | readonly (number | string | undefined)[] | undefined>
>
export type Runner = (x: Inputs) => Answers

/** Inputs of a case, as printed or in SI. */
export type Inputs = {
  readonly has: (name: string) => boolean
  readonly n: (name: string) => number
  readonly list: (name: string) => readonly number[]
  readonly words: (name: string) => readonly string[]
  readonly si: (name: string, unit: string) => number
}

/** An amount of a unit such as `yd3/h` in SI. */
export const si = (value: number, unit: string): number => value / toUnit(1, unit)

const bare = (x: unknown): unknown =>
  typeof x === 'object' && x !== null && 'value' in x ? x.value : x

export function inputsOf(c: Case): Inputs {
  const raw = (name: string): unknown => bare(c.inputs[name])
  const n = (name: string): number => {
    const value = raw(name)
    if (typeof value !== 'number') throw new TypeError(`${c.id} has no number ${name}`)
    return value
  }
  const all = (name: string): readonly unknown[] => {
    const value = raw(name)
    return Array.isArray(value) ? value : [value]
  }
  return {
    has: (name) => name in c.inputs,
    n,
    list: (name) => all(name).map(Number),
    words: (name) => all(name).map(String),
    si: (name, unit) => si(n(name), unit),
  }
}

const names = { arithmetic: 'arithmetic check', memory: 'from memory' } as const

export const titleOf = (c: Case): string => {
  const named = c.authority === 'public' || c.authority === 'book'
  const source = named ? c.source : names[c.authority]
  return `${c.id} ${source} (tolerance: ${c.tolerance_why})`
}

/** Compares every expected answer, each with its own tolerance. */
export function compare(c: Case, got: Answers): void {
  const whole =
    typeof c.expected === 'object' && c.expected !== null && !Array.isArray(c.expected)
      ? (c.expected as Readonly<Record<string, unknown>>)
      : { value: c.expected }
  for (const [name, answer] of Object.entries(whole)) {
    const tolerance = Number(
      typeof c.tolerance === 'object' && c.tolerance !== null
        ? (c.tolerance as Readonly<Record<string, unknown>>)[name]
        : c.tolerance,
    )
    const wanted = [bare(answer)].flat()
    const found = [got[name]].flat()
    expect(found.length, `${c.id} ${name}`).toBe(wanted.length)
    wanted.forEach((w, i) => {
      if (typeof w === 'string') expect(found[i], `${c.id} ${name}`).toBe(w)
      else
        expect(
          Math.abs(Number(found[i]) - Number(w)),
          `${c.id} ${name}: ${found[i]} for ${w}`,
        ).toBeLessThanOrEqual(tolerance * (1 + 1e-9))
    })
  }
}
