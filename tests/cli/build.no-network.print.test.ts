import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { build } from 'esbuild'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { whyNone, withoutNetwork } from '../support/no-network.ts'
import { ownCache } from '../support/own-cache.ts'
import { start, strangersFile, strangersManual } from '../support/strangers-manual.ts'

let root: string

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
  await writeFile(path.join(root, 'facility.yaml'), strangersFile)
})
afterAll(() => rm(root, { recursive: true, force: true }))

const why = whyNone === undefined ? '' : `: ${whyNone}`

describe.skipIf(whyNone !== undefined)(
  `where there is no network at all (left out where the system gives none of its own${why})`,
  () => {
    it('a manual is made with everything that is printed', async () => {
      const folder = await strangersManual()
      const page = await readFile(path.join(folder, 'site', 'index.html'), 'utf8')
      expect(page).toContain('<h1')
      const made = await readdir(folder, { recursive: true })
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
        const env = await ownCache(path.join(root, `cache-${command}`))
        const said = await withoutNetwork([process.execPath, driver, start, command, root], env)
        const told = JSON.parse(said) as Told
        expect(told.status).toBe(200)
        expect(told.bytes).toBeGreaterThan(1000)
        expect(told.strange).toEqual([])
        expect(told.fetched.filter(({ status }) => status !== 200)).toEqual([])
        expect(told.outside).toMatch(/^E(?:NETUNREACH|HOSTUNREACH)$/)
      },
    )
  },
)
