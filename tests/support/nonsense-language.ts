import { cp, mkdir, mkdtemp, readFile, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { isScalar, parseDocument, stringify } from 'yaml'
import { loadLibrary } from '../../src/cli/load/load-library.ts'
import type { Folders } from '../../src/cli/load/load-manual.ts'
import type { Path, SourceTree } from '../../src/read/read-yaml.ts'
import { facility } from '../../src/validate/schemas/facility.ts'
import { librarySchemas } from '../../src/validate/schemas/library-schemas.ts'
import { textsIn } from '../../src/validate/texts-of.ts'
import { folders } from './demo.ts'

/** A code that no language will ever have: ISO 639-2 keeps qaa to qtz for local use. */
export const nonsenseCode = 'qaa'

const plain = 'aeiouycnAEIOUYCN'
const accented = 'áéíóúýçñÁÉÍÓÚÝÇÑ'

/** Letters that no word of the nonsense language has, and that every English word has one of. */
export const englishLetter = /[aeiouycn]/i

/**
 * A text in a language that nobody speaks: vowels and some consonants carry accents, all of them
 * letters that the fonts have. What is named in braces and where links lead stays.
 */
const nonsense = (text: string): string =>
  text.replace(/\{[^{}]*\}|\]\([^)]*\)|[a-zA-Z]/g, (part) =>
    part.length > 1 ? part : (accented[plain.indexOf(part)] ?? part),
  )

/** The English text of a nonsense one. */
export const inEnglish = (text: string): string =>
  text.replace(/[áéíóúýçñ]/gi, (letter) => plain[accented.indexOf(letter)] ?? letter)

type Branch = { [step: string]: Branch | string } | (Branch | string)[]

function put(root: Branch, address: Path, text: string): void {
  let at: Branch = root
  for (const [i, step] of address.entries()) {
    const here = at as { [step: string | number]: Branch | string }
    if (i === address.length - 1) here[step] = text
    else {
      here[step] ??= typeof address[i + 1] === 'number' ? [] : {}
      at = here[step] as Branch
    }
  }
}

/** An entry of a list that has no text. */
const filled = (_: string, value: unknown): unknown =>
  Array.isArray(value) ? Array.from(value, (entry: unknown) => entry ?? {}) : value

/** The file that says the texts of a file of the library in nonsense. */
function nonsenseFile(tree: SourceTree, schema: unknown): string {
  const root: Branch = {}
  for (const { is, text, address } of textsIn(schema, tree.data))
    if (is === 'words') put(root, address, nonsense(text))
  return stringify(JSON.parse(JSON.stringify(root, filled)), {
    lineWidth: 0,
    defaultStringType: 'QUOTE_DOUBLE',
    defaultKeyType: 'PLAIN',
  })
}

/** A copy of the library with the nonsense language beside it. */
export async function withNonsense(): Promise<Folders> {
  const content = path.join(await mkdtemp(path.join(os.tmpdir(), 'nonsense-')), 'content')
  await cp(folders.content, content, { recursive: true })
  const { value } = await loadLibrary(content, folders.shared)
  if (!value) throw new Error('the library cannot be read')
  const folder = path.join(content, 'languages', nonsenseCode)
  for (const [kind, trees] of Object.entries(value) as [
    keyof typeof librarySchemas,
    SourceTree | readonly SourceTree[],
  ][])
    for (const tree of [trees].flat()) {
      const name = tree.file.path
        .replace(/^content\//, '')
        .replace(/^.*\/facts\.json$/, 'facts.yaml')
      const file = path.join(folder, name)
      await mkdir(path.dirname(file), { recursive: true })
      await writeFile(file, nonsenseFile(tree, librarySchemas[kind]))
    }
  return { ...folders, content }
}

/**
 * A demo facility whose people and places speak nonsense too: every text of its file, each on the
 * line that it has in English.
 * @returns The folder of the facility.
 */
export async function nonsenseFacility(id: string, { content }: Folders): Promise<string> {
  const folder = path.join(content, 'facilities', id)
  const file = path.join(folder, 'facility.yaml')
  const text = await readFile(file, 'utf8')
  const document = parseDocument(text)
  const ranges = textsIn(facility, document.toJS())
    .map((t) => document.getIn(t.path, true))
    .flatMap((node) => (isScalar(node) && node.range ? [node.range] : []))
    .sort((a, b) => b[0] - a[0])
  const spoken = ranges.reduce(
    (all, [from, to]) => all.slice(0, from) + nonsense(all.slice(from, to)) + all.slice(to),
    text,
  )
  await writeFile(file, `${spoken}language: ${nonsenseCode}\n`)
  return folder
}
