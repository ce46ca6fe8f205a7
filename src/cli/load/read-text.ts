import { readFileSync, realpathSync, statSync } from 'node:fs'
import type { ProblemCode, Result } from '../../model/problem.ts'
import { fileProblem, type SourceFile } from '../../read/source-file.ts'
import { tableText, utf8Text } from '../../read/table-text.ts'
import { fileKind } from '../../read/yaml-faults/disguise.ts'
import { pathBelow } from './shown-path.ts'

/** No facility file or procedure comes near this; whatever does is the wrong file. */
const largest = 1024 * 1024

const refused = (
  file: string,
  code: ProblemCode,
  message: string,
  hint: string,
): Result<never> => ({ value: undefined, problems: [fileProblem(file, code, message, hint)] })

/**
 * Reads a file, or says why it cannot be one of a facility. Files are small, and are read in a fraction
 * of the time that it takes to hand them to another thread and wait for that. A file reached through a link must still
 * lie inside `root`.
 * @param shown What problems call the file.
 * @param most Bytes that it may have.
 */
export async function readBytes(
  absolute: string,
  shown: string,
  root: string,
  most: number,
): Promise<Result<Uint8Array>> {
  let real: string
  try {
    real = realpathSync.native(absolute)
  } catch {
    return refused(
      shown,
      'file/missing',
      `there is no file ${shown}`,
      'a facility folder holds a file facility.yaml; name the folder, as in: npm run manual -- my-fair; npm run new -- my-fair makes one',
    )
  }
  if (pathBelow(realpathSync.native(root), real) === undefined)
    return refused(
      shown,
      'file/outside',
      `${shown} leads out of the folder`,
      'put the file itself into the folder',
    )
  const info = statSync(real)
  if (!info.isFile())
    return refused(shown, 'file/missing', `${shown} is not a file`, 'expected a YAML file')
  if (info.size > most)
    return refused(
      shown,
      'file/too-large',
      `the file is larger than ${most / 1024} KiB`,
      isTable(shown) ? 'expected a table of readings' : 'expected a YAML file of a few pages',
    )
  return { value: readFileSync(real), problems: [] }
}

const isTable = (name: string): boolean => /\.(csv|xlsx)$/i.test(name)

/**
 * Reads a text file, or says why it is none. YAML is UTF-8; tables may be in the encodings that
 * spreadsheets write.
 * @param shown What problems call the file.
 */
export async function readText(
  absolute: string,
  shown: string,
  root: string,
): Promise<Result<SourceFile>> {
  const { value: bytes, problems } = await readBytes(absolute, shown, root, largest)
  if (!bytes) return { value: undefined, problems }
  const text = isTable(shown) ? tableText(bytes) : utf8Text(bytes)
  if (text !== undefined) return { value: { path: shown, text }, problems: [] }
  const kind = fileKind(bytes)
  return refused(
    shown,
    'file/not-text',
    kind === undefined ? 'the file is not UTF-8 text' : `the file is ${kind}, not plain text`,
    isTable(shown)
      ? 'open it in the program that made it and save the sheet as CSV (UTF-8); a workbook is named .xlsx; a new name alone changes nothing else'
      : 'open it in the program that made it and save it as plain text (UTF-8); a new name alone changes nothing',
  )
}
