import { describe, expect, it } from 'vitest'
import { loadWorker } from '../../src/cli/load/load-scripts.ts'
import { workerFile } from '../../src/render/site/kept-site.ts'
import { isKept } from '../../src/render/site/site-files.ts'
import { sha256 } from '../../src/write/build-record.ts'
import { demoManual, demos, folders } from '../support/demo.ts'
import { siteFiles } from '../support/site-files.ts'
import { heaviest, siteWeights } from '../support/site-weights.ts'

describe.each(demos)('what a phone is sent for the site of %s', (id) => {
  it('stays within its budgets', async () => {
    const { manual, words } = await demoManual(id)
    const files = await siteFiles(manual, words, folders, new Map())
    const [kept, asked] = [files.filter(isKept), files.filter((f) => !isKept(f))]
    const weights = siteWeights([
      ...files,
      workerFile(await loadWorker(folders), kept, asked, sha256),
    ])
    const tooHeavy = Object.entries(weights).filter(
      ([what, kB]) => kB > heaviest[what as keyof typeof heaviest],
    )
    expect(tooHeavy).toEqual([])
    for (const kB of Object.values(weights)) expect(kB).toBeGreaterThan(0)
  })
})
