import { filled } from '../../../compose/context.ts'
import type { Finding, Guess } from '../../../model/manual/finding.ts'
import { entryLabel, entryOf } from './entry-of.ts'
import type { Shown } from './worked.ts'

/** Something that the track lacks, in words, with the question that it belongs to. */
export type Lack = {
  readonly id: string
  readonly severity: Finding['severity']
  readonly title: string
  readonly text: string
  readonly what: string
  /** Path of the entry, with dots. */
  readonly entry: string
  /** What that entry is called. */
  readonly label: string
  /** The usual values that it rests on, each with the path of its entry. */
  readonly guesses: readonly (Guess & { readonly entry: string })[]
}

export type Lacks = {
  readonly findings: readonly Lack[]
  /** What is still a line to fill in by hand on the emergency page. */
  readonly blanks: readonly Lack[]
}

/** Marks of links and of emphasis taken out. */
const unmarked = (text: string): string =>
  text.replace(/\[([^\]]*)\]\([^)]*\)/g, '$1').replace(/[*_`]/g, '')

/** The findings, worst first, those apart that are blanks of the emergency page. */
export function lacksOf({ manual, computed, facility, library }: Shown): Lacks {
  const plain = (text: string): string => unmarked(filled(text, computed))
  const all = manual.findings.map((f): Lack & { readonly isBlank: boolean } => ({
    id: f.id,
    severity: f.severity,
    title: plain(f.title),
    text: plain(f.text),
    what: plain(f.do),
    entry: f.ask.entry,
    label: f.ask.role === undefined ? entryLabel(f.ask.entry) : roleOf(f.ask.role, library),
    guesses: f.guesses.map((g) => ({ ...g, entry: entryOf(g.path, facility.file) })),
    isBlank: f.ask.role !== undefined || f.ask.entry.startsWith('emergency.'),
  }))
  const only = (wanted: boolean): readonly Lack[] =>
    all.flatMap(({ isBlank, ...lack }) => (isBlank === wanted ? [lack] : []))
  return { findings: only(false), blanks: only(true) }
}

const roleOf = (role: string, { words }: Shown['library']): string =>
  (words.roles as Readonly<Record<string, string>>)[role] ?? role
