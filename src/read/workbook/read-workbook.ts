import type { Problem, Result } from '../../model/problem.ts'
import { fileProblem } from '../source-file.ts'
import { type Archive, type ArchiveFault, isStop, openArchive } from './archive.ts'
import { type NumberFormat, readFormats } from './number-formats.ts'
import type { Sheet } from './sheet.ts'
import { readCells, readSharedStrings } from './sheet-cells.ts'
import { isXmlStop, readXml } from './xml-elements.ts'

/** Bytes of the largest workbook that is opened. */
export const largestWorkbook = 8 * 1024 * 1024
const mostSheets = 200
const mostCells = 100_000

type Stop = ArchiveFault | 'entities' | 'sheets' | 'cells' | 'no-workbook'

const said: Readonly<Record<Stop, { readonly message: string; readonly hint: string }>> = {
  broken: {
    message: 'the workbook is damaged, or is none',
    hint: 'open it in a spreadsheet program and save it again as .xlsx',
  },
  locked: {
    message: 'the workbook is locked with a password',
    hint: 'save it without the password; the facility folder is kept from others by other means',
  },
  'too-much': {
    message: 'the workbook unpacks to more than any facility has to say',
    hint: 'expected the sheets of one facility; if it came from somebody else, do not open it',
  },
  'too-many': {
    message: 'the workbook has more parts than any facility has to say',
    hint: 'expected the sheets of one facility; if it came from somebody else, do not open it',
  },
  entities: {
    message: 'the workbook declares entities, which no spreadsheet program does',
    hint: 'open it in a spreadsheet program and save it again as .xlsx; if it came from somebody else, do not open it',
  },
  sheets: {
    message: `the workbook has more than ${mostSheets} sheets`,
    hint: 'expected one sheet a subject; delete the others',
  },
  cells: {
    message: `the workbook has more than ${mostCells.toLocaleString('en-US')} cells`,
    hint: 'expected the sheets of one facility; delete what does not belong to it',
  },
  'no-workbook': {
    message: 'this is a document of an office program, but no workbook (.xlsx)',
    hint: 'open it in the program that made it and save it as a workbook, .xlsx',
  },
}

/** Thrown inside this file, and caught in it. */
type Halt = { readonly halt: Stop }
const halt = (at: Stop): never => {
  throw { halt: at } satisfies Halt
}
const isHalt = (thrown: unknown): thrown is Halt =>
  typeof thrown === 'object' && thrown !== null && 'halt' in thrown

/** A path in an archive that a part states against its own folder. */
function resolved(from: string, target: string): string {
  const steps = target.startsWith('/') ? [] : from.split('/').slice(0, -1)
  for (const step of target.split('/'))
    if (step === '..') steps.pop()
    else if (step !== '.' && step !== '') steps.push(step)
  return steps.join('/')
}

/** What a part refers to: targets by id, and by the last word of their kind. */
function relations(archive: Archive, part: string) {
  const folder = part.slice(0, part.lastIndexOf('/') + 1)
  const bytes = archive.part(`${folder}_rels/${part.slice(folder.length)}.rels`)
  const found: { id: string; kind: string; target: string }[] = []
  if (bytes)
    readXml(bytes, {
      open: (name, { Id = '', Type = '', Target = '' }) => {
        if (name !== 'Relationship') return
        found.push({
          id: Id,
          kind: Type.slice(Type.lastIndexOf('/') + 1),
          target: resolved(part, Target),
        })
      },
    })
  return found
}

/** Names of the sheets with the ids of their parts, and from which day the workbook counts. */
function readList(bytes: Uint8Array) {
  const sheets: { name: string; id: string }[] = []
  let from1904 = false
  readXml(bytes, {
    open: (name, attributes) => {
      if (name === 'workbookPr') from1904 = /^(1|true)$/.test(attributes['date1904'] ?? '')
      if (name !== 'sheet') return
      const id = Object.entries(attributes).find(([key]) => /:id$/.test(key))?.[1] ?? ''
      sheets.push({ name: attributes['name'] ?? '', id })
    },
  })
  return { sheets, from1904 }
}

const mainPart = (archive: Archive): string =>
  relations(archive, '').find((r) => r.kind === 'officeDocument')?.target ?? ''

/** The part of an archive that holds a sheet; undefined where there is none. */
export function partOfSheet(archive: Archive, title: string): string | undefined {
  const main = mainPart(archive)
  const list = archive.part(main)
  const id = list && readList(list).sheets.find(({ name }) => name === title)?.id
  return id === undefined ? undefined : relations(archive, main).find((r) => r.id === id)?.target
}

function sheetsOf(bytes: Uint8Array): readonly Sheet[] {
  const archive = openArchive(bytes)
  const main = mainPart(archive)
  const list = archive.part(main)
  if (!list || !/(^|\/)workbook\d*\.xml$/i.test(main)) return halt('no-workbook')
  const { sheets, from1904 } = readList(list)
  if (sheets.length > mostSheets) halt('sheets')
  const parts = relations(archive, main)
  const ofKind = (kind: string): Uint8Array | undefined =>
    archive.part(parts.find((r) => r.kind === kind)?.target ?? '')
  const [styles, texts] = [ofKind('styles'), ofKind('sharedStrings')]
  let cells = 0
  const shared = {
    strings: texts ? readSharedStrings(texts) : [],
    formats: styles ? readFormats(styles) : ([] as readonly NumberFormat[]),
    from1904,
    count: () => {
      cells += 1
      if (cells > mostCells) halt('cells')
    },
  }
  return sheets.flatMap(({ name, id }) => {
    const part = parts.find((r) => r.id === id)
    // Charts stand on sheets of their own, which hold no cells.
    const sheet = part?.kind === 'worksheet' ? archive.part(part.target) : undefined
    return sheet ? [{ name, rows: readCells(sheet, shared) }] : []
  })
}

/**
 * Reads a workbook (ECMA-376, .xlsx): its sheets as texts, as a person would type them. Formulas are
 * not worked; their results are taken. An archive that unpacks to more than a workbook, entities,
 * thousands of sheets and the like are refused before they cost anything.
 * @param path What problems call it.
 */
export function readWorkbook(path: string, bytes: Uint8Array): Result<readonly Sheet[]> {
  const refused = (at: Stop): Result<readonly Sheet[]> => {
    const problem: Problem = fileProblem(path, 'file/format', said[at].message, said[at].hint)
    return { value: undefined, problems: [problem] }
  }
  try {
    return { value: sheetsOf(bytes), problems: [] }
  } catch (thrown) {
    if (isStop(thrown)) return refused(thrown.stop)
    if (isXmlStop(thrown)) return refused(thrown.xml)
    if (isHalt(thrown)) return refused(thrown.halt)
    throw thrown
  }
}
