import { type ChildProcess, spawn } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { projectFolders } from '../../../src/cli/folders.ts'
import { demoFolder } from '../../support/demo.ts'
import { loopbackBrowser } from '../../support/loopback-browser.ts'

const { project } = projectFolders()

let browser: Awaited<ReturnType<typeof loopbackBrowser>>
let program: ChildProcess
let folder: string
let address: string

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'form-'))
  cpSync(demoFolder('brambleford'), folder, { recursive: true })
  program = spawn(
    process.execPath,
    [path.join(project, 'src', 'cli', 'start.mjs'), 'form', folder, '--no-open'],
    { env: { ...process.env, XDG_CACHE_HOME: path.join(folder, 'cache') } },
  )
  address = await new Promise<string>((found, failed) => {
    let said = ''
    program.stdout?.on('data', (data: Buffer) => {
      said += data.toString()
      const [, at] = /(http:\S+)/.exec(said) ?? []
      if (at !== undefined) found(at)
    })
    program.once('exit', () => failed(new Error(said)))
  })
  browser = await loopbackBrowser()
}, 60_000)

afterAll(async () => {
  await browser.close()
  program.kill('SIGKILL')
  rmSync(folder, { recursive: true, force: true })
})

it('the form of the running program shows the file, works it out, and says at once when the program has ended', async () => {
  const page = await browser.newPage()
  const faults: string[] = []
  page.on('pageerror', (error) => faults.push(String(error)))
  await page.goto(`${address}#oval`)
  const lap = await page.waitForSelector('[data-at="oval.lap"] input')
  const before = readFileSync(path.join(folder, 'facility.yaml'), 'utf8')
  const type = async (text: string): Promise<void> => {
    await lap?.click({ count: 3 })
    await page.keyboard.type(text)
    await page.keyboard.press('Tab')
  }
  await type('half a mile')
  expect(await page.$eval('[data-at="oval.lap"] .understood', (e) => e.textContent)).toBe(
    '1/2 mile = 804.7 m = 2,640 ft',
  )
  expect(await page.$('.gone')).toBeNull()
  program.kill('SIGKILL')
  await type('2,640 ft')
  const gone = await page.waitForSelector('.gone')
  expect(await gone?.evaluate((e) => e.getAttribute('role'))).toBe('alert')
  expect(await page.$$('.gone button')).toHaveLength(1)
  // Nothing is written that nobody has saved.
  expect(readFileSync(path.join(folder, 'facility.yaml'), 'utf8')).toBe(before)
  expect(faults).toEqual([])
}, 60_000)
