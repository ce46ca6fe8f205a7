import { spawnSync } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'

// How long files and functions are, of this checkout or of another one:
// npm run sizes [-- <checkout>]

type Length = { readonly where: string; readonly lines: number }

const project = process.cwd()
const measured = path.resolve(process.argv[3] ?? '.')

/** Every function of more than one line, from its first line to its last. */
function functionsIn(folder: string): readonly Length[] {
  const { stdout } = spawnSync(
    process.execPath,
    [
      path.join(project, 'node_modules', '@biomejs', 'biome', 'bin', 'biome'),
      'lint',
      `--config-path=${path.join(project, 'tests', 'sizes', 'every-function.json')}`,
      '--max-diagnostics=none',
      '--reporter=json',
      folder,
    ],
    { cwd: measured, encoding: 'utf8', maxBuffer: 2 ** 28 },
  )
  const report = JSON.parse(stdout) as {
    diagnostics: {
      location: { path: string; start: { line: number }; end: { line: number } }
    }[]
  }
  return report.diagnostics.map(({ location: { path: file, start, end } }) => ({
    where: `${file}:${start.line}`,
    lines: end.line - start.line + 1,
  }))
}

const longest = (lengths: readonly Length[]): string => {
  const first = [...lengths].sort((a, b) => b.lines - a.lines)[0]
  return first ? `${first.lines} (${first.where})` : 'none'
}

function sizesOf(folder: string): readonly (readonly [string, string | number])[] {
  const files = readdirSync(path.join(measured, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.(?:ts|mjs)$/.test(file))
    .map((file) => ({
      where: path.join(folder, file),
      text: readFileSync(path.join(measured, folder, file), 'utf8')
        .trimEnd()
        .split('\n'),
    }))
  const lengths = files.map(({ where, text }) => ({ where, lines: text.length }))
  const functions = functionsIn(folder)
  const within = functions.filter((f) => f.lines <= 35).length
  return [
    ['files', files.length],
    ['lines', lengths.reduce((sum, f) => sum + f.lines, 0)],
    ['longest file', longest(lengths)],
    ['files over 300 lines', lengths.filter((f) => f.lines > 300).length],
    ['files over 200 lines', lengths.filter((f) => f.lines > 200).length],
    [
      'lines over 100 columns',
      files.flatMap((f) => f.text).filter((line) => [...line].length > 100).length,
    ],
    ['functions of several lines', functions.length],
    ['of these within 35 lines', `${((100 * within) / functions.length).toFixed(1)} %`],
    ['over 50 lines', functions.filter((f) => f.lines > 50).length],
    ['over 70 lines', functions.filter((f) => f.lines > 70).length],
    ['longest function', longest(functions)],
  ]
}

for (const folder of ['src', 'tests']) {
  console.log(`\n${folder}`)
  for (const [name, value] of sizesOf(folder)) console.log(`  ${name.padEnd(30)}${value}`)
}
