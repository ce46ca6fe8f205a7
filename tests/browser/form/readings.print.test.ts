import { expect, it } from 'vitest'
import { smallTargets } from '../../support/accessible.ts'
import { faultsOfPage, looks } from '../../support/faults-of-page.ts'
import { firefox, openFirefox } from '../../support/firefox.ts'
import { demoFiles } from '../../support/form-page.ts'
import { type FormTab, useForms } from '../../support/use-forms.ts'

const depths = demoFiles('larkmoor')['depths.csv'] ?? ''

const { open } = useForms()

const here = async (page: FormTab): Promise<string> =>
  String(await page.evaluate('document.activeElement.getAttribute("aria-label") ?? ""'))
const kept = async (page: FormTab): Promise<Record<string, string>> =>
  JSON.parse(
    String(
      await page.evaluate(
        'JSON.stringify(Object.fromEntries(JSON.parse(localStorage.getItem("drafts") ?? "[]")))',
      ),
    ),
  )
const cell = (station: number, offset: number): string =>
  `[aria-label="Station ${station} ft, ${offset} ft from the rail"]`

const typedAt = async (page: FormTab, at: string): Promise<string> =>
  String(await page.evaluate(`document.querySelector(${JSON.stringify(at)}).value`))

/** Begins a table of depths by the keyboard alone, and types twelve readings. */
async function typesDepths(opening: Parameters<typeof open>[2]): Promise<void> {
  const { page } = await open('fresh', 'measured', opening)
  await page.focus('.start-machine summary')
  await page.keyboard.press('Enter')
  await page.keyboard.press('Tab')
  await page.keyboard.press('Tab')
  await page.keyboard.type('J. Marsh')
  await page.focus('.start-machine > button')
  await page.keyboard.press('Enter')
  await page.waitForSelector('.readings td input')
  const day = String(await page.$eval('.readings [type="date"]', (input) => input.value))
  expect(await here(page)).toMatch(/^Station 0 ft/)
  const readings = [
    '1 3/8',
    '35 mm',
    '1.5',
    '1 1/4',
    '13',
    '1 1/2',
    '1',
    '2',
    '1 1/8',
    '1',
    '1',
    '2',
  ]
  for (const reading of readings) {
    await page.keyboard.type(reading)
    await page.keyboard.press('Enter')
  }
  const rows = (await kept(page))['depths.csv']?.trim().split('\n') ?? []
  expect(rows[0]).toBe('station (ft),offset (ft),depth (in),date')
  // What cannot be true stands in no table, and is told below the grid.
  expect(rows).toHaveLength(1 + readings.length - 1)
  expect(rows[1]).toMatch(new RegExp(`^0,\\d+,1 3/8,${day}$`))
  expect(rows[2]).toMatch(new RegExp(`^0,\\d+,35 mm,${day}$`))
  const told = String(await page.$eval('.reading-faults', (list) => list.textContent))
  expect(told).toContain('outside what can be true')
  await page.waitForSelector('.readings-drawn svg')
  // What was understood is said of the place where the keyboard is.
  await page.focus('.readings td:nth-of-type(2) input')
  expect(await page.$eval('.readings .understood', (line) => line.textContent)).toMatch(
    /: 35 mm = 1\.378 in$/,
  )
  expect((await kept(page))['facility.yaml']).toContain(
    'surveys:\n  - { of: cushion-depth, file: depths.csv, by: J. Marsh }\n',
  )
  await page.close()
}

it('takes readings in by the keyboard alone, and draws them', () => typesDepths({}))

it.skipIf(!firefox)('does so in Firefox', async () => {
  const other = await openFirefox()
  try {
    await typesDepths({ of: other })
  } finally {
    await other.close()
  }
})

it('changes a table line by line, saves it beside the file, and takes steps back and forward', async () => {
  const { page } = await open('larkmoor', 'at-surveys.0')
  await page.locator('.readings select').fill('2027-05-15')
  await page.waitForFunction(
    `document.querySelector('.readings [type="date"]').value === '2027-05-15'`,
  )
  await page.locator(cell(330, 32)).fill('1 5/8')
  await page.keyboard.press('ArrowDown')
  const changed = depths.replace('330,32,1 1/2,2027-05-15', '330,32,1 5/8,2027-05-15')
  expect((await kept(page))['depths.csv']).toBe(changed)
  await page.locator('.bar .buttons button').click()
  expect((await kept(page))['depths.csv']).toBeUndefined()
  expect(await page.$eval('.bar .state', (p) => p.textContent)).toContain('Taken back')
  expect(await typedAt(page, cell(330, 32))).toBe('1 1/2')
  await page.locator('.bar .buttons button:nth-child(2)').click()
  expect((await kept(page))['depths.csv']).toBe(changed)
  await page.locator('.bar button.strong').click()
  expect(await page.$eval('dialog .answers', (list) => list.textContent)).toContain('Depths')
  await page.locator('dialog button.strong').click()
  await page.waitForFunction('form.files["depths.csv"]')
  expect(await page.evaluate('form.files')).toEqual({ 'depths.csv': changed })
  expect(await page.$eval('.bar .state', (p) => p.textContent)).toMatch(/Saved$/)
  await page.close()
})

it('asks where somebody else has read the same place meanwhile', async () => {
  const { page } = await open('larkmoor', 'at-surveys.0')
  await page.waitForSelector(cell(330, 32))
  await page.locator(cell(330, 32)).fill('1 7/8')
  await page.locator(cell(0, 5)).fill('1 7/8')
  await page.keyboard.press('Tab')
  const theirs = depths.replace(/(?<=^330,32,).*(?=,2027-06-12$)/m, '1 3/4')
  expect(theirs).not.toBe(depths)
  await page.evaluate(`form.elsewhereIn = { 'depths.csv': ${JSON.stringify(theirs)} }`)
  await page.locator('.bar button.strong').click()
  await page.locator('dialog button.strong').click()
  await page.waitForSelector('.clashes li')
  expect(await page.$eval('.clashes', (list) => list.textContent)).toMatch(
    /Station 330 ft, 32 ft from the rail.*Yours: 1 7\/8.*In the file: 1 3\/4/,
  )
  expect((await kept(page))['depths.csv']).toMatch(/^0,5,1 7\/8,2027-06-12$/m)
  await page.locator('.clashes button').click()
  expect((await kept(page))['depths.csv']).toMatch(/^330,32,1 7\/8,2027-06-12$/m)
  await page.close()
})

it('has no fault that a program finds, and fits narrow phones', async () => {
  const { page } = await open('larkmoor', 'at-surveys.0')
  await page.waitForSelector('.readings-drawn svg')
  expect(await faultsOfPage(page, looks)).toEqual([])
  expect(await smallTargets(page, 'main', 44)).toEqual([])
  await page.setViewport({ width: 320, height: 700 })
  expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(320)
  await page.close()
})
