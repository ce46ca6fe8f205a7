import { type ChildProcess, spawn, spawnSync } from 'node:child_process'
import {
  chmod,
  chown,
  mkdir,
  mkdtemp,
  readdir,
  readFile,
  rm,
  stat,
  writeFile,
} from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { date, folders } from '../support/demo.ts'
import { madeUpFair } from '../support/made-up-fairs.ts'

/**
 * Which circumstances are tried: in the gate the one that is as different as can be; all of them one
 * by one, on one core and under load too, with `OVALKEEP_MATRIX=all`, and with PDFs besides with
 * `OVALKEEP_MATRIX=pdf`.
 */
const matrix = process.env['OVALKEEP_MATRIX'] ?? 'gate'

const start = path.join(folders.project, 'src', 'cli', 'start.mjs')
const { id, text } = madeUpFair(17)

type Circumstance = {
  readonly env?: NodeJS.ProcessEnv
  /** Where facility and output lie. */
  readonly place?: string
  /** A program that starts the other. */
  readonly through?: readonly string[]
  /** Processes that do nothing but keep a core busy. */
  readonly load?: number
  /** The cache of another circumstance, or none. */
  readonly cache?: string
  /** Another user of the computer, by number, to whom folders and processes belong. */
  readonly user?: number
}

/** A user who owns nothing; only the owner of the computer may start processes of others. */
const nobody = 65_534
const trial =
  process.getuid?.() === 0
    ? spawnSync(
        process.execPath,
        ['-e', 'require("node:fs").readFileSync(process.argv[1])', start],
        { uid: nobody, gid: nobody, encoding: 'utf8' },
      )
    : undefined
const whyNoOther =
  trial === undefined
    ? 'only the owner of the computer can build as somebody else'
    : trial.status === 0
      ? undefined
      : `another user cannot read the program: ${trial.error ?? trial.stderr.trim().split('\n').at(-1)}`
const somebodyElse = whyNoOther === undefined ? { user: nobody } : {}

const strange = "Jürgen's Fair – 2027 [ä] 100%"

/** A clock that is years early or late every time somebody looks at it. */
const jumping = `
const { now } = Date
let looks = 0
const jumped = () => now() + ((looks++ % 7) - 3) * 1e11
const Real = Date
globalThis.Date = class extends Real {
  constructor(...args) {
    if (args.length > 0) super(...args)
    else super(jumped())
  }
  static now() {
    return jumped()
  }
}`
const clock = { NODE_OPTIONS: `--import=data:text/javascript,${encodeURIComponent(jumping)}` }

const alone: Readonly<Record<string, Circumstance>> = {
  'a warm cache': { cache: 'plain' },
  'a time zone 14 hours ahead': { env: { TZ: 'Pacific/Kiritimati' } },
  'a time zone half an hour off': { env: { TZ: 'America/St_Johns' } },
  'a locale with another i': { env: { LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8' } },
  'a locale without UTF-8': { env: { LANG: 'C', LC_ALL: 'C' } },
  'a folder with spaces and umlauts': { place: strange },
  ...(whyNoOther === undefined ? { 'another user of the computer': somebodyElse } : {}),
  'another user by name': { env: { HOME: '/nonexistent', USER: 'pat', LOGNAME: 'pat' } },
  'a clock that jumps': { env: clock },
  'one core': { through: ['taskset', '-c', '0'] },
  'much else to do': { load: 8 },
}
const atOnce: Circumstance = {
  env: {
    ...clock,
    TZ: 'Pacific/Kiritimati',
    LANG: 'tr_TR.UTF-8',
    LC_ALL: 'tr_TR.UTF-8',
    USER: 'pat',
  },
  place: strange,
  ...somebodyElse,
}
const circumstances: Readonly<Record<string, Circumstance>> =
  matrix === 'gate' ? { 'everything else different': atOnce } : alone

let root: string
let plain: ReadonlyMap<string, string>

const busy = (): ChildProcess => spawn(process.execPath, ['-e', 'for(;;);'], { stdio: 'ignore' })

async function hashes(folder: string): Promise<ReadonlyMap<string, string>> {
  const { files } = JSON.parse(await readFile(path.join(folder, 'build.json'), 'utf8')) as {
    readonly files: readonly { readonly path: string; readonly sha256: string }[]
  }
  const there = await readdir(folder, { recursive: true, withFileTypes: true })
  expect(there.filter((e) => e.isFile())).toHaveLength(files.length + 1)
  return new Map(files.map((f) => [f.path, f.sha256]))
}

/** The folder in which a circumstance has facility and output. */
const placeOf = (name: string, { place = 'place' }: Circumstance): string =>
  path.join(root, name.replaceAll(' ', '-'), place)

/** Builds the facility under a circumstance. @returns the hash of each file. */
async function built(name: string, circumstance: Circumstance) {
  const { env, through, load, cache, user } = circumstance
  const at = placeOf(name, circumstance)
  const fair = path.join(at, 'fair')
  await mkdir(fair, { recursive: true })
  await writeFile(path.join(fair, 'facility.yaml'), text)
  const own = path.join(root, 'cache', cache ?? name)
  await mkdir(own, { recursive: true })
  if (user !== undefined) for (const folder of [at, own]) await chown(folder, user, user)
  const browser = matrix === 'pdf' ? {} : { OVALKEEP_BROWSER: path.join(root, 'none') }
  const others = Array.from({ length: load ?? 0 }, busy)
  const args = ['build', fair, '--quiet', '--date', date, '--into', path.join(at, 'out')]
  const [program = '', ...before] = [...(through ?? []), process.execPath]
  const { OVALKEEP_BROWSER: _, ...inherited } = process.env
  const child = spawn(program, [...before, start, ...args], {
    cwd: at,
    env: { ...inherited, ...env, ...browser, XDG_CACHE_HOME: own },
    stdio: ['ignore', 'ignore', 'pipe'],
    ...(user === undefined ? {} : { uid: user, gid: user }),
  })
  let said = ''
  child.stderr.on('data', (data: Buffer) => (said += data.toString('utf8')))
  const code = await new Promise((resolve) => child.once('close', resolve))
  for (const other of others) other.kill('SIGKILL')
  expect(code, said).toBe(matrix === 'pdf' ? 0 : 3)
  return hashes(path.join(at, 'out', id))
}

beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'same-'))
  await chmod(root, 0o755)
  plain = await built('plain', {})
})
afterAll(() => rm(root, { recursive: true, force: true }))

describe('the same facility gives the same bytes', () => {
  it.each(Object.keys(circumstances))('with %s', async (name) => {
    const other = await built(name, circumstances[name] ?? {})
    expect(plain.size).toBeGreaterThan(100)
    const differing = [...plain].filter(([file, hash]) => other.get(file) !== hash)
    expect(differing.map(([file]) => file)).toEqual([])
    expect(other.size).toBe(plain.size)
  })

  it.skipIf(whyNoOther !== undefined)(
    `of which one was made by another user of the computer${whyNoOther === undefined ? '' : ` (left out: ${whyNoOther})`}`,
    async () => {
      const owners = await Promise.all(
        Object.entries(circumstances).map(async ([name, circumstance]) => {
          const record = path.join(placeOf(name, circumstance), 'out', id, 'build.json')
          return (await stat(record)).uid
        }),
      )
      expect(owners).toContain(nobody)
    },
  )
})
