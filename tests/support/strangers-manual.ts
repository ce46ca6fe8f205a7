import { mkdir, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { date, folders } from './demo.ts'
import { madeUpFair } from './made-up-fairs.ts'
import { withoutNetwork } from './no-network.ts'
import { ownCache } from './own-cache.ts'
import { onceInRun } from './printed-demos.ts'

const fair = madeUpFair(31)

export const strangersId = fair.id

/** Words in which a program that looks for addresses would find some. */
const addresses =
  'https://zq.example/a www.zq.example mailto:zq@zq.example javascript:zq() \\\\server\\zq file:///etc/zq =HYPERLINK("https://zq.example/")'

/** The file of a fair that a stranger has written. */
export const strangersFile = `${fair.text
  .replace(
    /^name: .*$/m,
    `name: ${JSON.stringify('Fair <zq-a> https://zq.example/ javascript:zq()')}`,
  )
  .replace(
    'contacts:\n',
    `contacts:\n  - { role: fire, name: ${JSON.stringify('"><zq-b> https://zq.example/')}, phone: "701-2233" }\n`,
  )}
notes:
  - procedure: harrow
    text: ${JSON.stringify(`See ${addresses}`)}
site-address: https://fair.example/manual/
`

/** The program as npm starts it. */
export const start = path.join(folders.project, 'src', 'cli', 'start.mjs')

/**
 * The manual of that fair with everything that is printed, made by the whole program in a process of its
 * own, without a network where the system gives it none. @returns its folder.
 */
export async function strangersManual(): Promise<string> {
  const { root } = await onceInRun('stranger', async (all) => {
    const own = path.join(all, 'stranger')
    const folder = path.join(own, 'fair')
    await mkdir(folder, { recursive: true })
    await writeFile(path.join(folder, 'facility.yaml'), strangersFile)
    const options = ['--quiet', '--date', date, '--into', path.join(own, 'out')]
    const env = await ownCache(path.join(own, 'cache'))
    const said = await withoutNetwork([process.execPath, start, 'build', folder, ...options], env)
    return [said]
  })
  return path.join(root, 'stranger', 'out', strangersId)
}
