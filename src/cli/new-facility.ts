import { access, mkdir } from 'node:fs/promises'
import path from 'node:path'
import { createInterface } from 'node:readline/promises'
import { blankFacility } from '../edit/blank-facility.ts'
import { splice } from '../edit/splice.ts'
import { idFor } from '../model/id-for.ts'
import { parseQuantity } from '../model/quantity/parse-quantity.ts'
import { facility } from '../validate/schemas/facility.ts'
import { writeFiles } from '../write/write-files.ts'
import { inCommand } from './in-command.ts'
import { type ExitCode, exit, type Io } from './io.ts'
import { facilitySchemaFile } from './schemas.ts'
import { unwritable } from './user-fault.ts'

/** Asks a question and waits for the answer, which may be empty. */
type Ask = (question: string) => Promise<string>

/** What somebody says of a facility before there is a file; empty where nobody knows. */
type Answers = {
  readonly name: string
  readonly town: string
  readonly metric: boolean
  readonly lap: string
  readonly straight: string
}

/** Asks until an answer is a quantity, or empty. */
async function askLength(ask: Ask, question: string, unit: string, io: Io): Promise<string> {
  for (;;) {
    const said = (await ask(`${question} `)).trim()
    const typed = /^[\d,.\s/]+$/.test(said) && said !== '' ? `${said} ${unit}` : said
    const read = parseQuantity(typed)
    if (typed === '' || read.ok) return typed
    io.err(`${read.fault.message}: ${read.fault.hint ?? 'write a number and a unit'}`)
  }
}

/** Asks what is known before there is a file. */
export async function answers(ask: Ask, io: Io): Promise<Answers> {
  io.err('Four questions; an empty answer can be filled in later.')
  const name = (await ask('What is the name of your fair? ')).trim()
  const town = (await ask('In which town is it? ')).trim()
  const metric = /^m/i.test((await ask('Feet or meters? [feet] ')).trim())
  const unit = metric ? 'm' : 'ft'
  const lap = await askLength(
    ask,
    `How long is one lap? (such as ${metric ? '804.7 m' : '2,640 ft'})`,
    unit,
    io,
  )
  const straight = await askLength(
    ask,
    `How long is one straight? (such as ${metric ? '180 m' : '600 ft'})`,
    unit,
    io,
  )
  return { name, town, metric, lap, straight }
}

/** A blank facility file with the answers in their places. */
export function filledIn(given: Answers, zone: string | undefined): string {
  const { name, town, metric, lap, straight } = given
  const values: readonly (readonly [path: readonly string[], value: string])[] = [
    [['id'], idFor(name)],
    [['name'], name],
    [['place', 'town'], town],
    [['place', 'time-zone'], town === '' ? '' : (zone ?? '')],
    [['units'], metric ? 'metric' : 'us'],
    [['paper'], metric ? 'a4' : 'letter'],
    [['oval', 'lap'], lap],
    [['oval', 'straight'], straight],
  ]
  let text = blankFacility(facility, metric ? 'metric' : 'us')
  for (const [at, value] of values) {
    if (value === '') continue
    const made = splice(text, { path: at, value })
    if (!made.ok) throw new Error(`the blank file: ${made.why}`)
    text = made.text
  }
  return text
}

const zoneOf = (): string | undefined => {
  const zone = new Intl.DateTimeFormat().resolvedOptions().timeZone
  return zone.includes('/') ? zone : undefined
}

/** Asks on the terminal; nothing where there is none. */
async function askOnTerminal(io: Io): Promise<Answers | undefined> {
  if (!io.terminal || process.stdin.isTTY !== true) return undefined
  const lines = createInterface({ input: process.stdin, output: process.stderr })
  try {
    return await answers((question) => lines.question(question), io)
  } finally {
    lines.close()
  }
}

const nothing: Answers = { name: '', town: '', metric: false, lap: '', straight: '' }

/**
 * Makes a folder with a facility file in which every entry is explained, and the schema by which
 * editors help. A file that is there already is never touched.
 */
export async function newFacility(folder: string, io: Io): Promise<ExitCode> {
  const target = path.resolve(io.cwd, folder)
  const file = path.join(target, 'facility.yaml')
  const shown = path.relative(io.cwd, target) || '.'
  const isThere = await access(file).then(
    () => true,
    () => false,
  )
  if (isThere) {
    io.err(
      `There is a facility.yaml in ${shown} already, and it was left alone. Name another folder.`,
    )
    return exit.usage
  }
  const closed = await unwritable(target)
  if (closed !== undefined) {
    io.err(closed)
    return exit.unwritable
  }
  const given = await askOnTerminal(io)
  await mkdir(target, { recursive: true })
  const text = filledIn(given ?? nothing, zoneOf())
  await writeFiles(target, [{ path: 'facility.yaml', data: text }, facilitySchemaFile()])
  io.out(
    [
      `${path.join(shown, 'facility.yaml')} is there, with every entry explained.`,
      'Fill in the lines that stand empty, in an editor for plain text; then:',
      `  npm run check -- ${inCommand(shown)}`,
      `  npm run manual -- ${inCommand(shown)}`,
    ].join('\n'),
  )
  return exit.fine
}
