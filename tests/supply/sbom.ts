import { spawnSync } from 'node:child_process'
import { mkdirSync, writeFileSync } from 'node:fs'
import path from 'node:path'

// Writes what the program is made of as CycloneDX 1.5 (ECMA-424), from the locked versions:
// npm run sbom

type Bom = {
  serialNumber?: string
  readonly metadata: {
    timestamp?: string
    tools?: unknown
    readonly component: { name: string }
  }
}

/**
 * The list as npm writes it, without what changes from one writing to the next: its moment, its
 * number, the version of npm and the name of the folder.
 * @throws Error when npm writes none.
 */
export function billOfMaterials(project: string): string {
  const npm = process.env['npm_execpath']
  const args = ['sbom', '--package-lock-only', '--sbom-format', 'cyclonedx']
  const { stdout, stderr } = npm
    ? spawnSync(process.execPath, [npm, ...args], {
        cwd: project,
        encoding: 'utf8',
        maxBuffer: 2 ** 28,
      })
    : spawnSync('npm', args, {
        cwd: project,
        encoding: 'utf8',
        maxBuffer: 2 ** 28,
        shell: process.platform === 'win32',
      })
  if (!stdout.startsWith('{')) throw new Error(`npm writes no list: ${stderr}`)
  const bom = JSON.parse(stdout) as Bom
  delete bom.serialNumber
  delete bom.metadata.timestamp
  delete bom.metadata.tools
  bom.metadata.component.name = 'ovalkeep'
  return `${JSON.stringify(bom, null, 2)}\n`
}

export function writeBill(project: string): void {
  const file = path.join(project, 'dist', 'sbom.cdx.json')
  mkdirSync(path.dirname(file), { recursive: true })
  writeFileSync(file, billOfMaterials(project))
  console.log(`${path.relative(project, file)} says what the program is made of.`)
}
