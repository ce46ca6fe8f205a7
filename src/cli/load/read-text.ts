import { readFile, realpath, stat } from 'node:fs/promises'
import type { ProblemCode, Result } from '../../model/problem.ts'
import { fileProblem, type SourceFile } from '../../read/source-file.ts'
import { fileKind } from '../../read/yaml-faults/disguise.ts'
import { pathBelow } from './shown-path.ts'

/** No facility file or procedure comes near this; whatever does is the wrong file. */
const largest = 1024 * 1024

const refused = (
  file: string,
  code: ProblemCode,
  message: string,
  hint: string,
): Result<SourceFile> => ({ value: undefined, problems: [fileProblem(file, code, message, hint)] })

/**
 * Reads a text file, or says why it is none. A file reached through a link must still lie inside
 * `root`.
 * @param shown What problems call the file.
 */
export async function readText(
  absolute: string,
  shown: string,
  root: string,
): Promise<Result<SourceFile>> {
  let real: string
  try {
    real = await realpath(absolute)
  } catch {
    return refused(
      shown,
      'file/missing',
      `there is no file ${shown}`,
      'a facility folder holds a file facility.yaml; name the folder, as in: npm run manual -- my-fair; npm run new -- my-fair makes one',
    )
  }
  if (pathBelow(await realpath(root), real) === undefined)
    return refused(
      shown,
      'file/outside',
      `${shown} leads out of the folder`,
      'put the file itself into the folder',
    )
  const info = await stat(real)
  if (!info.isFile())
    return refused(shown, 'file/missing', `${shown} is not a file`, 'expected a YAML file')
  if (info.size > largest)
    return refused(
      shown,
      'file/too-large',
      `the file is larger than ${largest / 1024} KiB`,
      'expected a YAML file of a few pages',
    )
  const bytes = await readFile(real)
  try {
    if (bytes.includes(0)) throw new TypeError('NUL')
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes)
    return { value: { path: shown, text }, problems: [] }
  } catch {
    const kind = fileKind(bytes)
    const isTable = shown.endsWith('.csv')
    return refused(
      shown,
      'file/not-text',
      kind === undefined ? 'the file is not UTF-8 text' : `the file is ${kind}, not plain text`,
      isTable
        ? 'open it in the program that made it and save the sheet as CSV (UTF-8); a new name alone changes nothing'
        : 'open it in the program that made it and save it as plain text (UTF-8); a new name alone changes nothing',
    )
  }
}
