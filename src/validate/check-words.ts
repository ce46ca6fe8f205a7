import { fleschKincaid } from 'flesch-kincaid'
import { syllable } from 'syllable'
import writing from '../../shared/writing.json' with { type: 'json' }
import type { Problem } from '../model/problem.ts'
import type { Path } from '../read/read-yaml.ts'
import type { Library, Sourced } from './check-library.ts'
import type { Procedure } from './schemas/procedure.ts'
import type { WorksheetFile } from './schemas/worksheets.ts'
import { plainText, textsOf } from './texts-of.ts'

/**
 * Limits of the house style: words of a step, and the school years in which a procedure, and the
 * explanations of worksheets, can be read.
 */
export const limits = { stepWords: 20, noteSentences: 2, grade: 5, worksheetGrade: 8 } as const

const sentencesOf = (text: string): readonly string[] =>
  text.split(/(?<=[.!?:])\s+(?=["“A-Z])/).filter((s) => /[a-zA-Z]/.test(s))
const wordsOf = (text: string): readonly string[] => text.match(/[A-Za-z][A-Za-z'’-]*/g) ?? []

/**
 * How hard a procedure is to read: the school year of the Flesch–Kincaid formula, over all its
 * steps, notes and tables.
 */
export type Readability = {
  readonly id: string
  readonly words: number
  readonly sentences: number
  readonly grade: number
}

const read = new Set(['do', 'note', 'how', 'found', 'text', 'see', 'purpose', 'choose'])

function gradeOf(id: string, texts: readonly string[]): Readability {
  const sentences = texts.flatMap((t) => sentencesOf(plainText(t)))
  const words = sentences.flatMap(wordsOf)
  return {
    id,
    words: words.length,
    sentences: sentences.length,
    grade: fleschKincaid({
      sentence: sentences.length,
      word: words.length,
      syllable: words.reduce((sum, w) => sum + syllable(w), 0),
    }),
  }
}

export const readability = (item: Sourced<Procedure>): Readability =>
  gradeOf(
    item.value.id,
    textsOf(item).flatMap((t) => (read.has(t.key) ? [t.text] : [])),
  )

/** How hard the explanations of the worksheets of one subject are to read. */
const worksheetReadability = (file: Sourced<WorksheetFile>): Readability =>
  gradeOf(
    file.tree.file.path,
    Object.values(file.value.calculations ?? {}).map((c) => c.about),
  )

type Tell = (part: string, message: string, hint: string) => void

const vague = new RegExp(`\\b(${writing.vague.join('|')})\\b`, 'i')
const verbs = new Set(writing.verbs)

function checkStep(text: string, tell: Tell): void {
  const plain = plainText(text)
  const first = /^[A-Za-z]+/.exec(plain)?.[0] ?? ''
  if (!verbs.has(first))
    tell(
      first,
      `a step begins with "${first}"`,
      'begin with what to do: a verb of shared/writing.json',
    )
  if (wordsOf(plain).length > limits.stepWords)
    tell(
      text,
      `a step of ${wordsOf(plain).length} words`,
      `at most ${limits.stepWords}; put the rest into the note`,
    )
  if (sentencesOf(plain).length > 1 || /, then |\band then\b|;/.test(plain))
    tell(text, 'a step with more than one action', 'one action a step')
}

/** Trade terms used in a text that the glossary does not explain. */
function undefinedTerms(text: string, terms: ReadonlySet<string>): readonly string[] {
  return Object.entries(writing.terms)
    .filter(
      ([word, entry]) =>
        !terms.has(entry.toLowerCase()) && new RegExp(`\\b${word}s?\\b`, 'i').test(text),
    )
    .map(([word]) => word)
}

function checkTexts(item: Sourced<unknown>, terms: ReadonlySet<string>): Problem[] {
  const problems: Problem[] = []
  for (const { text, key, path } of textsOf(item)) {
    const tell: Tell = (part, message, hint) =>
      void problems.push(
        item.tree.problem(item.tree.textPlaceOf(path, part), 'text/style', message, {
          hint,
          severity: 'warning',
        }),
      )
    const isStep = key === 'do' && path.includes('steps')
    if (isStep) checkStep(text, tell)
    if (key === 'note' && sentencesOf(plainText(text)).length > limits.noteSentences + 1)
      tell(text, 'a note of more than three sentences', 'a note says why, or how to tell')
    const loose = isStep || key === 'note' || key === 'how' ? vague.exec(plainText(text)) : null
    if (loose) tell(loose[0], `"${loose[0]}" says no amount`, 'name a figure, or say what to see')
    for (const term of undefinedTerms(plainText(text), terms))
      tell(term, `"${term}" is not in the glossary`, 'add it to content/glossary.yaml')
  }
  return problems
}

/** Cautions that no step and no procedure shows, and procedures that nothing leads to. */
function loose(library: Library): Problem[] {
  const steps = library.procedures.flatMap((p) => [
    ...p.value.cautions,
    ...p.value.methods.flatMap((m) => m.steps.flatMap((s) => s.cautions ?? [])),
  ])
  const shown = new Set(steps)
  const unused = library.cautions
    .filter((c) => !shown.has(c.value.id))
    .map((c) =>
      c.tree.problem(
        c.tree.placeOf([...c.path, 'id']),
        'text/style',
        `no step shows the caution "${c.value.id}"`,
        { hint: 'put it on the step that it belongs to', severity: 'warning' },
      ),
    )
  const links = [...library.chapters, ...library.schedules, ...library.findings].flatMap((i) =>
    textsOf(i as Sourced<unknown>).flatMap((t) =>
      [...t.text.matchAll(/procedure:([a-z0-9-]+)/g)].map((m) => m[1] ?? ''),
    ),
  )
  const led = new Set([
    ...library.symptoms.flatMap((s) => s.value.causes.map((c) => c.procedure)),
    ...links,
  ])
  const alone = library.procedures
    .filter((p) => !led.has(p.value.id))
    .map((p) =>
      p.tree.problem(
        p.tree.placeOf(['id']),
        'text/style',
        `no symptom, chapter or plan leads to "${p.value.id}"`,
        { hint: 'name it in a symptom, a chapter or content/plans.yaml', severity: 'warning' },
      ),
    )
  return [...unused, ...alone]
}

function tooHard(
  { tree }: Sourced<unknown>,
  path: Path,
  { grade }: Readability,
  most: number,
): Problem[] {
  if (!(grade > most)) return []
  return [
    tree.problem(tree.placeOf(path), 'text/style', `reads as school year ${grade.toFixed(1)}`, {
      hint: `at most ${most}: shorter sentences, shorter words`,
      severity: 'warning',
    }),
  ]
}

/**
 * Holds the words of the library against the house style; everything is a warning with its place.
 */
export function checkWords(library: Library): readonly Problem[] {
  const terms = new Set(library.terms.map((t) => t.value.term.toLowerCase()))
  const hard = [
    ...library.procedures.flatMap((p) => tooHard(p, ['id'], readability(p), limits.grade)),
    ...library.worksheets.flatMap((f) =>
      tooHard(f, [], worksheetReadability(f), limits.worksheetGrade),
    ),
  ]
  return [
    ...library.procedures.flatMap((p) => checkTexts(p, terms)),
    ...[
      ...library.cautions,
      ...library.symptoms,
      ...library.chooser,
      ...library.worksheets,
    ].flatMap((i) => checkTexts(i as Sourced<unknown>, terms)),
    ...hard,
    ...loose(library),
  ]
}
