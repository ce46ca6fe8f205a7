import { cp, mkdtemp, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { cacheFolder } from '../../src/print/browser/cache-folder.ts'
import { thisMachine } from '../../src/print/browser/machine.ts'
import { writeMadeUpFairs } from '../support/made-up-fairs.ts'
import { runCommand } from './whole-process.ts'

// Many made-up facilities by one command, as whole processes with cold caches: time by facility and the
// most memory of node, the browser apart. Aim: a hundred take a hundred times as long as one, and no
// more memory than ten. With PDFs a few show the same.

const root = await mkdtemp(path.join(os.tmpdir(), 'bench-many-'))
const fairs = await writeMadeUpFairs(path.join(root, 'fairs'), 100)
const cache = await cacheFolder(thisMachine(process.env))

/** A cache that has the browser and nothing else. */
async function emptyCache(name: string): Promise<string> {
  const own = path.join(root, name)
  await cp(cache, path.join(own, 'ovalkeep'), {
    recursive: true,
    filter: (file) => file === cache || path.relative(cache, file).startsWith('chromium-'),
  })
  return own
}

async function line(count: number, kind: string, env: NodeJS.ProcessEnv): Promise<void> {
  const own = await emptyCache(`cache-${kind}-${count}`)
  const into = path.join(root, `out-${kind}-${count}`)
  const named = fairs.slice(0, count)
  const args = [...named, '--quiet', '--date', '2027-06-14', '--into', into]
  const { wall, cpu, peak, peaks } = runCommand(['build', ...args], {
    env: { ...process.env, ...env, XDG_CACHE_HOME: own },
    fine: [0, 3],
  })
  const each = (s: number): string => `${(s / count).toFixed(2)} s`
  console.log(
    `${`${count} facilities, ${kind}`.padEnd(48)} ${wall.toFixed(0)} s, each ${each(wall)}, of node ${each(cpu)} CPU, largest process ${peak.toFixed(0)} MiB, all ${peaks.toFixed(0)} MiB`,
  )
  await rm(into, { recursive: true, force: true })
  await rm(own, { recursive: true, force: true })
}

const without = { OVALKEEP_BROWSER: path.join(root, 'none') }
for (const count of [1, 10, 100]) await line(count, 'without PDFs', without)
for (const count of [1, 4]) await line(count, 'with PDFs', {})
await rm(root, { recursive: true, force: true })
