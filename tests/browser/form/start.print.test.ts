import { readFileSync } from 'node:fs'
import path from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { form } from '../../../src/validate/schemas/form.ts'
import { smallTargets } from '../../support/accessible.ts'
import { folders } from '../../support/demo.ts'
import { faultsOfPage, looks } from '../../support/faults-of-page.ts'
import { demoFiles } from '../../support/form-page.ts'
import { type FormTab, useForms } from '../../support/use-forms.ts'

const files = demoFiles('larkmoor')
const larkmoor = files['facility.yaml'] ?? ''
const said = form.parse(parse(readFileSync(path.join(folders.content, 'form.yaml'), 'utf8')))
const remark = `# ${said.says.saving.remarks}`
const screens = ['start', ...said.subjects.map(({ id }) => id), 'result'].filter(
  (s) => s !== 'rest',
)

const { address, open } = useForms()

const textOf = async (page: FormTab, selector: string): Promise<string> =>
  String(
    await page.evaluate(`document.querySelector(${JSON.stringify(selector)})?.textContent ?? ''`),
  )
/** What the file says now: the page keeps it with every key. */
const draft = async (page: FormTab): Promise<string> =>
  String(await page.evaluate('localStorage.getItem("draft") ?? ""'))
const type = async (page: FormTab, at: string, text: string): Promise<void> => {
  await page.locator(`[data-at="${at}"] input`).fill(text)
  await page.keyboard.press('Tab')
}

describe('the form', () => {
  it('makes a file from twelve answers, typed as people say them', async () => {
    const { page, faults } = await open('fresh', 'help')
    await type(page, 'emergency.number', '911')
    await type(page, 'emergency.address', '12 Mill Road')
    await type(page, 'emergency.gate', 'Gate A')
    await type(page, 'ambulance.name', 'County ambulance')
    // The file has a contact more now, and the keyboard is where it was led.
    await page.waitForFunction(
      'document.activeElement.closest("[data-at]")?.dataset.at === "ambulance.phone"',
    )
    await page.keyboard.type('2170')
    await type(page, 'superintendent.name', 'Pat Roe')
    await type(page, 'superintendent.phone', '2171')
    await page.locator('[data-first="veterinarian"] .not-yet input').click()
    await page.locator('main .onward').click()
    await type(page, 'name', 'Our Fair')
    await type(page, 'place.town', 'Hollow Creek')
    await page.locator('[data-at="units"] input[value="us"]').click()
    await page.evaluate('location.hash = "oval"')
    await type(page, 'oval.lap', '2640')
    expect(await page.$eval('[data-at="oval.lap"] input', (i) => i.value)).toBe('2640 ft')
    expect(await textOf(page, '[data-at="oval.lap"] .understood')).toBe('2640 ft = 804.7 m')
    await type(page, 'oval.straight', '600')
    await page.locator('[data-at="cushion.material"] input[value="clay"]').click()
    await page.evaluate('location.hash = "race-days"')
    await page.locator('.add').click()
    await page.locator('[data-at="race-days.0.date"] input').fill('2027-08-03')
    await page.keyboard.press('Tab')
    await type(page, 'race-days.0.first-post', '1 pm')
    await type(page, 'race-days.0.races', '10')
    expect(await textOf(page, 'nav .soft')).toBe('12 of the first 12 questions answered')
    expect(await draft(page)).toBe(
      [
        remark,
        'emergency:',
        '  number: "911"',
        '  address: 12 Mill Road',
        '  gate: Gate A',
        '  stops-racing: [superintendent]',
        'contacts:',
        '  - { role: ambulance, name: County ambulance, phone: "2170" }',
        '  - { role: superintendent, name: Pat Roe, phone: "2171" }',
        'name: Our Fair',
        'id: our-fair',
        'place:',
        '  town: Hollow Creek',
        'units: us',
        'paper: letter',
        'oval:',
        '  lap: 2640 ft',
        '  straight: 600 ft',
        'cushion:',
        '  material: clay',
        'race-days:',
        '  - { date: 2027-08-03, first-post: "1:00 PM", races: 10 }',
        '',
      ].join('\n'),
    )
    // Closing the page loses nothing.
    await page.goto('about:blank')
    await page.goto(address('fresh', 'fair'))
    expect(await page.$eval('[data-at="name"] input', (i) => i.value)).toBe('Our Fair')
    expect(faults).toEqual([])
    await page.close()
  })

  it('says at the field what is wrong, in plain words, while it is typed', async () => {
    const { page } = await open('fresh', 'oval')
    await page.locator('[data-at="oval.lap"] input').fill('26')
    expect(await textOf(page, '[data-at="oval.lap"] .fault')).toMatch(
      /^Look again: "26 ft" is outside/,
    )
    const input = '[data-at="oval.lap"] input'
    const described = await page.$eval(input, (i) => i.getAttribute('aria-describedby') ?? '')
    expect(await page.$eval(input, (i) => i.getAttribute('aria-invalid'))).toBe('true')
    expect(await textOf(page, `#${described.split(' ')[0]}`)).toContain('Look again')
    await page.evaluate('location.hash = "fair"')
    await type(page, 'name', 'Larkmoor Fair')
    expect(await textOf(page, '[data-at="name"] .fault')).toContain('from the example')
    await page.close()
  })

  it('changes the measurement that goes before a stated value, and says so', async () => {
    const { page } = await open('larkmoor', 'oval')
    const field = '[data-at="oval.cross-fall.turns"]'
    expect(await page.$eval(`${field} input`, (i) => i.value)).toBe('6.4 %')
    expect(await textOf(page, `${field} .measured`)).toMatch(
      /Measured on 2027-05-08 by D. Hasterlin/,
    )
    await type(page, 'oval.cross-fall.turns', '6.6')
    expect(await draft(page)).toBe(larkmoor.replace('value: 6.4 %', 'value: 6.6 %'))
    await page.close()
  })

  it('shows what will change before it is written, and takes a step back', async () => {
    const { page } = await open('larkmoor', 'oval')
    await type(page, 'oval.lap', '2,641 ft')
    await page.locator('.bar button.strong').click()
    expect(await textOf(page, 'dialog .before')).toContain('lap: 2,640 ft')
    expect(await textOf(page, 'dialog .after')).toContain('lap: 2,641 ft')
    await page.locator('dialog button.strong').click()
    await page.waitForFunction('form.saved.length === 1 && !document.querySelector("dialog").open')
    expect(await page.evaluate('form.saved[0]')).toBe(larkmoor.replace('2,640 ft', '2,641 ft'))
    expect(await textOf(page, '.bar .state')).toBe('Saved')
    await page.locator('.bar .buttons button').click()
    expect(await page.$eval('[data-at="oval.lap"] input', (i) => i.value)).toBe('2,640 ft')
    await page.close()
  })

  it('loses nothing where somebody else has changed the file meanwhile', async () => {
    const { page } = await open('larkmoor', 'oval')
    await type(page, 'oval.lap', '2,641 ft')
    await type(page, 'oval.straight', '601 ft')
    const theirs = larkmoor
      .replace('straight: 600 ft', 'straight: 602 ft')
      .replace('people: 3', 'people: 4')
    await page.evaluate(`form.elsewhere = ${JSON.stringify(theirs)}`)
    await page.locator('.bar button.strong').click()
    await page.locator('dialog button.strong').click()
    await page.waitForSelector('.clashes li')
    expect(await page.evaluate('form.saved.length')).toBe(0)
    expect(await draft(page)).toBe(theirs.replace('2,640 ft', '2,641 ft'))
    expect(await textOf(page, '.clashes')).toMatch(/Yours: 601 ft.*In the file: 602 ft/)
    await page.locator('.clashes button').click()
    expect(await draft(page)).toContain('straight: 601 ft')
    await page.close()
  })

  it('adds, changes, orders and takes out the entries of a list, and brings them back', async () => {
    const { page } = await open('larkmoor', 'people')
    const titles = () => page.$$eval('.entry-title', (all) => all.map((t) => t.textContent))
    const before = await titles()
    await page.locator('.add').click()
    await page.locator('.entry.open select').fill('fire')
    await page.locator('.entry.open [data-at$=".name"] input').fill('B. Name')
    await page.keyboard.press('Tab')
    expect(await titles()).toEqual([...before, 'Fire company'])
    await page.locator('.entry.open .entry-foot .buttons button').click()
    expect((await titles()).at(-2)).toBe('Fire company')
    await page.locator('.entry.open .entry-foot .buttons button:last-child').click()
    expect(await titles()).toEqual(before)
    expect(await draft(page)).toBe(larkmoor)
    await page.locator('.bar .buttons button').click()
    expect(await titles()).toHaveLength(before.length + 1)
    await page.close()
  })

  it('asks of a machine what its works need, with what is usual for its kind', async () => {
    const { page, faults } = await open('fresh', 'machines')
    await page
      .locator('.start-machine input[type="text"], .start-machine input:not([type])')
      .fill('the old water truck')
    await page.locator('.start-machine input[value="spray"]').click()
    await page.locator('.start-machine button').click()
    await page.waitForSelector('[data-at="equipment.0.tank"]')
    expect(await textOf(page, '[data-at="equipment.0.flow"] .until')).toMatch(
      /reckons with \d+ gal\/min/,
    )
    expect(await page.$('.entry > .fields > [data-at="equipment.0.blade-angle"]')).toBeNull()
    await type(page, 'equipment.0.tank', '2000')
    expect(await draft(page)).toBe(
      [
        remark,
        'equipment:',
        '  - id: old-water-truck',
        '    name: the old water truck',
        '    can: [spray]',
        '    from: own',
        '    tank: 2000 gal',
        '',
      ].join('\n'),
    )
    await page.locator('[data-at="equipment.0.from"] input[value="borrowed"]').click()
    await page.waitForSelector('.entry > .fields > [data-at="equipment.0.owner"]')
    expect(faults).toEqual([])
    await page.close()
  })

  it('can be filled in by the keyboard alone', async () => {
    const { page } = await open('fresh', 'start')
    const here = () =>
      page.evaluate('document.activeElement.textContent || document.activeElement.value')
    for (let i = 0; i < 60 && !String(await here()).startsWith('Begin'); i++)
      await page.keyboard.press('Tab')
    await page.keyboard.press('Enter')
    await page.waitForSelector('[data-at="emergency.number"]')
    await page.keyboard.press('Tab')
    await page.keyboard.type('911')
    await page.keyboard.press('Tab')
    // Answered, the question asks no longer whether nobody knows: the next one follows.
    await page.keyboard.type('12 Mill Road')
    expect(await draft(page)).toContain('address: 12 Mill Road')
    await page.close()
  })

  it('goes to the place that is asked for', async () => {
    const { page } = await open('larkmoor', 'at-equipment.5.flow')
    const at = await page.evaluate('document.activeElement.closest("[data-at]").dataset.at')
    expect(at).toBe('equipment.5.flow')
    await page.close()
  })

  it('makes the manual and says where it is', async () => {
    const { page } = await open('larkmoor', 'result')
    await page.waitForSelector('.make button:not([hidden])')
    await page.locator('.make button').click()
    await page.waitForSelector('.making a')
    expect(await page.evaluate('form.made')).toBe(1)
    expect(await textOf(page, '.making')).toContain('The manual is ready. in its folder')
    await page.close()
  })
})

describe.each(['fresh', 'larkmoor'] as const)('every screen of the form of %s', (fair) => {
  let form: Awaited<ReturnType<typeof open>>
  beforeAll(async () => {
    form = await open(fair, 'start')
  })

  it.each(screens)(
    'has no fault that a program finds, and fits narrow phones: %s',
    async (screen) => {
      const { page, faults } = form
      await page.evaluate(`location.hash = '${screen}'`)
      await page.waitForFunction(`document.body.dataset.screen === '${screen}'`)
      await page.evaluate(
        'for (const fold of document.querySelectorAll("main details")) fold.open = true',
      )
      const entry = await page.$('.entry-head')
      await entry?.click()
      expect(await faultsOfPage(page, looks)).toEqual([])
      expect(await smallTargets(page, 'main', 44)).toEqual([])
      await page.setViewport({ width: 320, height: 700 })
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(320)
      expect(faults).toEqual([])
    },
  )
})
