import { spawnSync } from 'node:child_process'
import { mkdtemp, readFile, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { expect, it } from 'vitest'
import { demoFolder, folders } from '../support/demo.ts'

/** A network of its own without any way out, which some systems give to nobody but their owner. */
const alone = ['--user', '--map-root-user', '--net']
const has = spawnSync('unshare', [...alone, 'true']).status === 0

it.skipIf(!has)(
  'a manual is made where there is no network at all (left out where the system gives none of its own)',
  async () => {
    const into = await mkdtemp(path.join(os.tmpdir(), 'no-network-'))
    try {
      const start = path.join(folders.project, 'src', 'cli', 'start.mjs')
      const build = ['build', demoFolder('brambleford'), '--date', '2027-06-14', '--into', into]
      const { status, stderr } = spawnSync(
        'unshare',
        [...alone, process.execPath, start, ...build],
        { encoding: 'utf8', env: { ...process.env, XDG_CACHE_HOME: path.join(into, 'cache') } },
      )
      // No browser was named, so the PDFs are left out and nothing else.
      expect(status, stderr).toBe(3)
      const page = await readFile(path.join(into, 'brambleford', 'site', 'index.html'), 'utf8')
      expect(page).toContain('Brambleford')
    } finally {
      await rm(into, { recursive: true, force: true })
    }
  },
)
