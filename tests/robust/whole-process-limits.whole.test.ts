import { mkdir, mkdtemp, open, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { deflateRawSync } from 'node:zlib'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { runWhole } from '../bench/whole-process.ts'
import { folders } from '../support/demo.ts'
import { madeUpFair } from '../support/made-up-fairs.ts'
import { rawWorkbook } from '../support/workbooks.ts'

/** More than any of these needs, MiB. */
const mostMemory = 500
/**
 * Seconds of work, whatever else the computer does: a guard against what would never end. How long
 * each takes is told on the terminal.
 */
const hangs = 20

const start = path.join(folders.project, 'src', 'cli', 'start.mjs')
const { text: sound } = madeUpFair(5)
let root: string
let count = 0

type Files = Readonly<Record<string, string | Uint8Array | { readonly size: number }>>

async function folderOf(files: Files): Promise<string> {
  const folder = path.join(root, String(++count))
  const all: Files = { 'facility.yaml': sound, ...files }
  for (const [name, data] of Object.entries(all)) {
    const file = path.join(folder, name)
    await mkdir(path.dirname(file), { recursive: true })
    if (typeof data === 'string' || !('size' in data)) await writeFile(file, data)
    else {
      const handle = await open(file, 'w')
      await handle.truncate(data.size)
      await handle.close()
    }
  }
  return folder
}

/** A command as a whole process, which refuses what it is given within limits. */
function refusal(name: string, ...args: readonly string[]): string {
  const env = { ...process.env, XDG_CACHE_HOME: path.join(root, 'cache') }
  const { said, cpu, peak } = runWhole([start, ...args], { env, fine: [1] })
  console.log(`${name}: refused in ${cpu.toFixed(1)} s of CPU and ${peak.toFixed(0)} MiB`)
  expect(peak, name).toBeLessThan(mostMemory)
  expect(cpu, name).toBeLessThan(hangs)
  return said
}

const entities = (last: string): string =>
  Array.from({ length: 30 }, (_, i) => `<!ENTITY e${i + 1} "${`&e${i};`.repeat(10)}">`).join('') +
  last

/** An archive with one part that is a few hundred kilobytes, and 256 MiB where it is unpacked. */
function zipBomb(): Uint8Array {
  const packed = deflateRawSync(Buffer.alloc(256 * 2 ** 20, 'x'), { level: 9 })
  const plain = Buffer.from(rawWorkbook([{ name: 'a', rows: '' }]))
  // The sheet of a sound workbook is exchanged for it, in its own place and in the list at the end.
  const name = Buffer.from('xl/worksheets/sheet1.xml')
  const own = plain.indexOf(name) - 30
  const size = plain.readUInt32LE(own + 18)
  const before = plain.subarray(0, own)
  const after = plain.subarray(own + 30 + name.length + size)
  const head = Buffer.from(plain.subarray(own, own + 30 + name.length))
  head.writeUInt32LE(packed.length, 18)
  const moved = Buffer.concat([before, head, packed, after])
  const shift = packed.length - size
  const end = moved.lastIndexOf(Buffer.from([0x50, 0x4b, 5, 6]))
  const list = moved.readUInt32LE(end + 16) + shift
  moved.writeUInt32LE(list, end + 16)
  for (let at = list; at < end; ) {
    const nameLength = moved.readUInt16LE(at + 28)
    const isOwn = moved.subarray(at + 46, at + 46 + nameLength).equals(name)
    if (isOwn) moved.writeUInt32LE(packed.length, at + 20)
    const from = moved.readUInt32LE(at + 42)
    if (from > own) moved.writeUInt32LE(from + shift, at + 42)
    at += 46 + nameLength + moved.readUInt16LE(at + 30) + moved.readUInt16LE(at + 32)
  }
  return moved
}

const railLine = (file: string): string =>
  sound.replace(
    /^oval:$/m,
    `oval:\n  rail-line: { file: ${file}, date: 2027-05-01, by: P. P., offset: "3 ft" }`,
  )

const points = (most: number): string =>
  JSON.stringify({
    type: 'LineString',
    coordinates: Array.from({ length: most }, (_, i) => [-89 + i / 1e7, 40 + i / 1e7]),
  })

const large = { size: 100 * 2 ** 20 }
const weather = (file: string): string => `${sound}weather: { file: ${file} }\n`

beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'limits-'))
  // The program is bundled and its library read, which none of these is to be blamed for.
  const env = { ...process.env, XDG_CACHE_HOME: path.join(root, 'cache') }
  runWhole([start, 'check', await folderOf({})], { env, fine: [0, 1] })
})
afterAll(() => rm(root, { recursive: true, force: true }))

describe('what a stranger may have put into a facility folder is refused as a whole process', () => {
  it.each<readonly [string, Files, RegExp]>([
    [
      'entries of YAML that stand for each other',
      {
        'facility.yaml': `a: &a0 [x]\n${Array.from({ length: 40 }, (_, i) => `b${i}: &a${i + 1} [${`*a${i}, `.repeat(9)}*a${i}]`).join('\n')}\n`,
      },
      /\[yaml\/alias\]/,
    ],
    [
      'groups of YAML in each other',
      { 'facility.yaml': `a: ${'[{b: '.repeat(1700)}` },
      /\[file\/too-large\]/,
    ],
    [
      'entries of YAML further and further in',
      { 'facility.yaml': Array.from({ length: 700 }, (_, i) => `${' '.repeat(i)}a:`).join('\n') },
      /\[file\/too-large\]/,
    ],
    [
      'a workbook that unpacks to 256 MiB',
      { 'facility.yaml': weather('bomb.xlsx'), 'bomb.xlsx': zipBomb() },
      /\[file\/format\]/,
    ],
    [
      'entities of a walked line that stand for each other',
      {
        'facility.yaml': railLine('rail.gpx'),
        'rail.gpx': `<!DOCTYPE gpx [<!ENTITY e0 "x">${entities('')}]><gpx><trk><name>&e30;</name></trk></gpx>`,
      },
      /rail\.gpx.*\[file\/\w+\]/,
    ],
    [
      'entities of a walked line from elsewhere',
      {
        'facility.yaml': railLine('rail.gpx'),
        'rail.gpx':
          '<!DOCTYPE gpx [<!ENTITY e SYSTEM "file:///etc/hostname">]><gpx><trk><name>&e;</name></trk></gpx>',
      },
      /rail\.gpx.*\[file\/\w+\]/,
    ],
    [
      'a walked line of a million points',
      { 'facility.yaml': railLine('rail.geojson'), 'rail.geojson': points(1e6) },
      /\[file\/too-large\]/,
    ],
    [
      'a walked line of as many points as a file has room for',
      { 'facility.yaml': railLine('rail.geojson'), 'rail.geojson': points(28_000) },
      /\[file\/too-large\]/,
    ],
    ['a facility file of 100 MiB', { 'facility.yaml': large }, /\[file\/too-large\]/],
    ['a procedure of 100 MiB', { 'procedures/own.yaml': large }, /\[file\/too-large\]/],
    [
      'a table of 100 MiB',
      { 'facility.yaml': weather('w.csv'), 'w.csv': large },
      /\[file\/too-large\]/,
    ],
    [
      'a workbook of 100 MiB',
      { 'facility.yaml': weather('w.xlsx'), 'w.xlsx': large },
      /\[file\/too-large\]/,
    ],
    [
      'a walked line of 100 MiB',
      { 'facility.yaml': railLine('rail.gpx'), 'rail.gpx': large },
      /\[file\/too-large\]/,
    ],
  ])('%s', async (name, files, says) => {
    expect(refusal(name, 'check', await folderOf(files))).toMatch(says)
  })

  it('a workbook of 100 MiB, and one that unpacks to 256 MiB, that are taken in', async () => {
    const folder = await folderOf({ 'large.xlsx': large, 'bomb.xlsx': zipBomb() })
    for (const name of ['large.xlsx', 'bomb.xlsx'])
      expect(refusal(name, 'workbook', folder, path.join(folder, name))).toMatch(
        /\[file\/[a-z-]+\]/,
      )
  })
})
