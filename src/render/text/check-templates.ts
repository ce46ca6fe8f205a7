import Handlebars from 'handlebars'
import { didYouMean } from '../../model/closest.ts'
import type { Problem } from '../../model/problem.ts'
import { placeAt, problemAt, type SourceFile } from '../../read/source-file.ts'
import type { Words } from '../../validate/schemas/words.ts'
import { faultOfTemplate, placeIn } from './template-fault.ts'
import { type TemplateTexts, templateFile } from './templates.ts'

type Node = hbs.AST.Node

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value && 'loc' in value

/** A node with all that stand in it. */
const nodesIn = (value: unknown): readonly Node[] =>
  Array.isArray(value)
    ? value.flatMap(nodesIn)
    : typeof value !== 'object' || value === null
      ? []
      : [...(isNode(value) ? [value] : []), ...Object.values(value).flatMap(nodesIn)]

const isPath = (node: Node): node is hbs.AST.PathExpression => node.type === 'PathExpression'
const isPartial = (node: Node): node is hbs.AST.PartialStatement => node.type === 'PartialStatement'

/** The steps of `words.sheet.scan` below `words`, or of `@root.words.sheet.scan`. */
function stepsInWords({ data, parts }: hbs.AST.PathExpression): readonly string[] | undefined {
  const path = data && parts[0] === 'root' ? parts.slice(1) : data ? [] : parts
  return path[0] === 'words' ? path.slice(1) : undefined
}

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** What is wrong with the way to a word, or nothing. */
function faultOf(
  steps: readonly string[],
  words: Words,
): { wrong: string; hint: string | undefined } | undefined {
  let at: unknown = words
  for (const step of steps) {
    const known = isGroup(at) ? Object.keys(at) : []
    if (!isGroup(at) || !known.includes(step)) return { wrong: step, hint: didYouMean(step, known) }
    at = at[step]
  }
  return isGroup(at)
    ? { wrong: steps.at(-1) ?? 'words', hint: 'name one word of the group' }
    : undefined
}

function problemAtNode(
  file: SourceFile,
  { loc }: Node,
  length: number,
  message: string,
  hint: string | undefined,
): Problem {
  const { line, column } = loc.start
  return problemAt(file, placeIn(file, line, column, length), 'ref/missing', message, { hint })
}

function wordProblem(file: SourceFile, node: hbs.AST.PathExpression, words: Words): Problem[] {
  const { original } = node
  const steps = stepsInWords(node)
  const fault = steps && faultOf(steps, words)
  if (!fault) return []
  const message = `content/words.yaml has no "${fault.wrong}" as in ${original}`
  return [problemAtNode(file, node, original.length, message, fault.hint)]
}

function partialProblem(
  file: SourceFile,
  { name: node }: hbs.AST.PartialStatement,
  partials: readonly string[],
): Problem[] {
  if (!isPath(node))
    return [problemAtNode(file, node, 1, 'the name of a partial is worked out', 'write its name')]
  const name = node.original
  if (partials.includes(name)) return []
  const hint = didYouMean(name, partials)
  return [problemAtNode(file, node, name.length, `there is no partial "${name}"`, hint)]
}

/** Text that a reader would see: what stands outside tags, and in attributes that are read out. */
const typed = /(?:aria-label|alt|title)="([^"{}]*[a-z]{2}[^"{}]*)"|>([^<>]*[a-z]{2}[^<>]*)</gi

/** Words that stand in a template itself, where no other language can reach them. */
function typedWords(file: SourceFile): Problem[] {
  // What is filled in is no text of the template; neither are entities.
  const bare = `>${file.text}<`.replace(/\{\{[\s\S]*?\}\}|&\w+;/g, (all) => ' '.repeat(all.length))
  return [...bare.matchAll(typed)].flatMap((m) => {
    const said = m[1] ?? m[2] ?? ''
    const words = said.trim()
    // The bracket that was put before the text shifts all of it by one.
    const offset = m.index - 1 + m[0].indexOf(said) + said.indexOf(words)
    return [
      problemAt(
        file,
        placeAt(file, offset, words.length),
        'text/style',
        `"${words}" stands in a template`,
        { hint: 'words stand in content/words.yaml' },
      ),
    ]
  })
}

type Known = { readonly words: Words; readonly partials: readonly string[] }

function checkTemplate(file: SourceFile, known: Known): Problem[] {
  try {
    const nodes = nodesIn(Handlebars.parse(file.text))
    return [
      ...nodes.filter(isPath).flatMap((node) => wordProblem(file, node, known.words)),
      ...nodes.filter(isPartial).flatMap((node) => partialProblem(file, node, known.partials)),
      ...typedWords(file),
    ]
  } catch (error) {
    return [faultOfTemplate(file, error)]
  }
}

const partialFolder = 'partials/'

/**
 * Holds all templates against the words: each word that they name must be there, and none may be
 * typed in them.
 */
export function checkTemplates(templates: TemplateTexts, words: Words): readonly Problem[] {
  const partials = Object.keys(templates)
    .filter((name) => name.startsWith(partialFolder))
    .map((name) => name.slice(partialFolder.length))
  return Object.entries(templates).flatMap(([name, text]) =>
    checkTemplate(templateFile(name, text), { words, partials }),
  )
}
