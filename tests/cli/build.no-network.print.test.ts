import { spawnSync } from 'node:child_process'
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { build } from 'esbuild'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { folders } from '../support/demo.ts'
import { madeUpFair } from '../support/made-up-fairs.ts'

/**
 * A network of its own: no way out of it, and the computer itself reached by its own address alone. Who
 * does not own the computer is its owner inside for as long as that takes, where the system allows it.
 */
const [user, group] = [process.getuid?.() ?? 0, process.getgid?.() ?? 0]
const asOwner = user === 0 ? [] : ['--user', '--map-root-user']
const asBefore =
  user === 0 ? [] : ['unshare', '--user', `--map-user=${user}`, `--map-group=${group}`]
const alone = [...asOwner, '--net', 'sh', '-c', 'ip link set lo up && exec "$@"', 'sh', ...asBefore]
const inside = (...args: readonly string[]) =>
  spawnSync('unshare', [...alone, ...args], {
    encoding: 'utf8',
    env: { ...process.env, XDG_CACHE_HOME: path.join(root, 'cache') },
    maxBuffer: 2 ** 26,
  })

let root = os.tmpdir()
const trial = inside('true')
const why = trial.status === 0 ? '' : `: ${String(trial.error ?? trial.stderr).trim()}`
const start = path.join(folders.project, 'src', 'cli', 'start.mjs')
const { id, text } = madeUpFair(23)
const fair = (): string => path.join(root, 'fair')

/** What a command serves inside, as a program inside has fetched it. */
type Told = {
  readonly status: number
  readonly bytes: number
  /** Addresses outside that the first page asks for. */
  readonly strange: readonly string[]
  readonly fetched: readonly { readonly path: string; readonly status: number }[]
  readonly outside: string
}

beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'no-network-'))
  await mkdir(fair())
  await writeFile(path.join(fair(), 'facility.yaml'), text)
})
afterAll(() => rm(root, { recursive: true, force: true }))

describe.skipIf(trial.status !== 0)(
  `where there is no network at all (left out where the system gives none of its own${why})`,
  () => {
    it('a manual is made with everything that is printed', async () => {
      const into = path.join(root, 'out')
      const { status, stderr } = inside(
        ...[process.execPath, start, 'build', fair()],
        ...['--quiet', '--date', '2027-06-14', '--into', into],
      )
      expect(status, stderr).toBe(0)
      const page = await readFile(path.join(into, id, 'site', 'index.html'), 'utf8')
      expect(page).toContain('<h1')
      const made = await readdir(path.join(into, id), { recursive: true })
      expect(made).toEqual(expect.arrayContaining(['binder.pdf', 'field-book.pdf', 'forms.pdf']))
      expect(made.filter((name) => name.endsWith('.pdf')).length).toBeGreaterThan(30)
    })

    it.each(['form', 'preview'])(
      '%s shows its pages, which ask for nothing elsewhere',
      async (command) => {
        const driver = path.join(root, 'served-alone.mjs')
        await build({
          entryPoints: [path.join(import.meta.dirname, '..', 'support', 'served-alone.ts')],
          ...{ outfile: driver, bundle: true, format: 'esm', platform: 'node', logLevel: 'error' },
        })
        const { stdout, stderr } = inside(process.execPath, driver, start, command, fair())
        const told = JSON.parse(stdout === '' ? `"${stderr}"` : stdout) as Told
        expect(told.status).toBe(200)
        expect(told.bytes).toBeGreaterThan(1000)
        expect(told.strange).toEqual([])
        expect(told.fetched.filter(({ status }) => status !== 200)).toEqual([])
        expect(told.outside).toMatch(/^E(?:NETUNREACH|HOSTUNREACH)$/)
      },
    )
  },
)
