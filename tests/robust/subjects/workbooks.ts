import path from 'node:path'
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate'
import { baseFor, standingIn } from '../../../src/cli/workbook/standing.ts'
import { changesText, countedText } from '../../../src/cli/workbook/taken-text.ts'
import { layOut } from '../../../src/edit/workbook/lay-out.ts'
import type { Laid } from '../../../src/edit/workbook/layout.ts'
import { type Standing, type TakenIn, takeIn } from '../../../src/edit/workbook/take-in.ts'
import { hasErrors } from '../../../src/model/problem.ts'
import { readYaml } from '../../../src/read/read-yaml.ts'
import { facilityWorkbook } from '../../../src/render/workbook/facility-workbook.ts'
import { checkFacility } from '../../../src/validate/check-facility.ts'
import { rawWorkbook, textSheet } from '../../support/workbooks.ts'
import type { Chance } from '../chance.ts'
import { type Files, type Ground, today } from '../ground.ts'
import { faultsOfProblems } from '../judge/problems.ts'
import { slipIn } from '../judge/slips.ts'
import { hostileTexts, oddDays, oddNumbers } from '../mutations/hostile.ts'
import { type Mutated, mutate } from '../mutations/mutate.ts'
import { inFolder, lookAtFolder } from './facility-folder.ts'
import type { Subject } from './subject.ts'

/** The workbook of the small facility, before anybody has written into it. */
type Made = { readonly standing: Standing; readonly laid: Laid; readonly bytes: Uint8Array }

const made = new WeakMap<Ground, Promise<Made>>()

async function make(ground: Ground): Promise<Made> {
  const { standing } = await inFolder(ground, ground.facilities.shaken, (root) =>
    standingIn(root, today),
  )
  if (!standing) throw new Error('the small facility has faults')
  const laid = layOut(baseFor(standing), 'us', standing.procedures)
  return { standing, laid, bytes: await facilityWorkbook(laid) }
}

function madeFor(ground: Ground): Promise<Made> {
  const known = made.get(ground) ?? make(ground)
  made.set(ground, known)
  return known
}

/** One part of the archive is another; what it refers to stays. */
function otherPart(bytes: Uint8Array, chance: Chance): Mutated {
  const parts = unzipSync(bytes)
  const name = chance.oneOf(Object.keys(parts).filter((part) => /\.(?:xml|rels)$/.test(part)))
  const text = strFromU8(parts[name] ?? new Uint8Array(0))
  const { file, by } = mutate(Buffer.from(text), 'xml', chance)
  const changed = { ...parts, [name]: strToU8(file.toString('utf8')) }
  return { file: Buffer.from(zipSync(changed, { level: 1 })), by: by.map((b) => `${name} ${b}`) }
}

/** Cells say something else, as people, programs and accidents write it. */
function otherCells({ laid }: Made, chance: Chance): Mutated {
  const sheets = laid.sheets.map(({ title, rows }) => ({
    title,
    rows: rows.map((row) => row.map((cell) => cell?.text ?? '')),
  }))
  const texts = sheets.flatMap(({ rows }) => rows.flat()).filter((text) => text !== '')
  const kinds = [oddNumbers, oddDays, hostileTexts, texts, ['']]
  for (let i = 1 + chance.below(6); i > 0; i--) {
    const { rows } = chance.oneOf(sheets)
    if (rows.length === 0) continue
    const row = chance.oneOf(rows)
    row[chance.below(row.length + 1)] = chance.oneOf(chance.oneOf(kinds))
  }
  if (chance.happens(0.1)) sheets.reverse()
  const raw = sheets.map(({ title, rows }) => textSheet(title, rows))
  return { file: Buffer.from(rawWorkbook(raw)), by: ['cells'] }
}

function mutated(of: Made, chance: Chance): Mutated {
  const kind = chance.below(10)
  if (kind === 0) return mutate(Buffer.from(of.bytes), 'bytes', chance)
  return kind < 5 ? otherPart(of.bytes, chance) : otherCells(of, chance)
}

/** What was read and is to be entered, told without slips and with places, and sound. */
function faultsOfTaking(taken: TakenIn, textOf: (file: string) => string | undefined) {
  const told = [...countedText(taken.counted), ...changesText(taken)].join('\n')
  const slip = slipIn(told)
  const placeless = taken.problems.filter(
    ({ code, place }) => place.file === 'facility.xlsx' && !place.cell && !code.startsWith('file/'),
  )
  const tree = taken.text && readYaml({ path: 'facility.yaml', text: taken.text }).value
  const unsound = tree === undefined || (tree && hasErrors(checkFacility(tree).problems))
  return [
    ...faultsOfProblems(taken.problems, textOf),
    ...placeless.map(({ message }) => `a fault without its cell: ${message}`),
    ...(slip === undefined ? [] : [`tells "${slip}": ${told.slice(0, 300)}`]),
    ...(taken.text === undefined && !hasErrors(taken.problems) ? ['refused without a word'] : []),
    ...(taken.text !== undefined && unsound ? ['what would be entered has errors'] : []),
    ...taken.tables
      .filter(({ file }) => !/^[\w-]+\.csv$/.test(file))
      .map(({ file }) => `a table with the name ${file}`),
  ]
}

/** How often a manual is made of what a workbook says. */
const manuals = 0.3

/** A workbook that was changed: told with its cells and left out, or taken in and made a manual of. */
export const workbooks: Subject = async (ground, chance) => {
  const of = await madeFor(ground)
  const { file, by } = mutated(of, chance)
  const taken = takeIn({ name: 'facility.xlsx', bytes: file, text: undefined }, of.standing)
  const { shaken } = ground.facilities
  const faults = faultsOfTaking(taken, (name) => shaken.get(name)?.toString('utf8'))
  const seen = { file: path.join('shaken', 'facility.xlsx'), by }
  if (taken.text === undefined) return { ...seen, ending: 'refused', faults }
  if (!chance.happens(manuals)) return { ...seen, ending: 'made', faults }
  const all: Files = new Map([
    ...shaken,
    ...taken.tables.map((table) => [table.file, Buffer.from(table.text)] as const),
    ['facility.yaml', Buffer.from(taken.text)] as const,
  ])
  const { faults: more } = await inFolder(ground, all, (root) =>
    lookAtFolder(root, all, ground.small, ground, chance),
  )
  return { ...seen, ending: 'made', faults: [...faults, ...more] }
}
