import { describe, expect, it } from 'vitest'
import type { Manual } from '../../../src/model/manual.ts'
import { createTemplates } from '../../../src/render/text/templates.ts'
import { emergencyView } from '../../../src/render/views/emergency-view.ts'
import { createPen } from '../../../src/render/views/pen.ts'
import { assetsFor } from '../../support/demo.ts'
import { bareFacility, manualOf, smallManual } from '../../support/small.ts'

type Load = typeof smallManual

async function pageOf(load: Load, medium: 'screen' | 'paper'): Promise<string> {
  const { manual, words } = await load()
  const { templates } = await assetsFor(words, 'linked')
  const pen = createPen(manual, words, 'paper', {
    worksheetHref: () => undefined,
    procedureHref: () => undefined,
  })
  return createTemplates({ ...templates, probe: '{{> emergency emergency}}' }).render('probe', {
    words,
    emergency: emergencyView(pen, medium),
  })
}

const bare: Load = () => manualOf(bareFacility)

/** As if the facility file left out nothing. */
const complete: Load = async () => {
  const { manual, words } = await smallManual()
  const filled = JSON.stringify(manual.emergency, (_, value: unknown) =>
    value === '' ? 'known' : Array.isArray(value) && value.length === 0 ? ['known'] : value,
  )
  return { manual: { ...manual, emergency: JSON.parse(filled) as Manual['emergency'] }, words }
}

describe('the emergency page', () => {
  it('has a line to write on below every label of which nothing is known', async () => {
    const page = await pageOf(bare, 'paper')
    for (const row of page.matchAll(/<dt>([^<]*)<\/dt><dd>(.*?)<\/dd>/gs))
      expect(row[2], row[1]).toContain('class="e-fill"')
    expect([...page.matchAll(/<dt>/g)].length).toBeGreaterThanOrEqual(20)
    expect(page).toMatch(/e-dial"><span class="e-fill"/)
    expect(page).not.toContain('undefined')
  })

  it('has none where everything is known', async () =>
    expect(await pageOf(complete, 'paper')).not.toContain('e-fill'))

  it('rings from a screen, and only from there', async () => {
    expect(await pageOf(smallManual, 'screen')).toContain('href="tel:911"')
    expect(await pageOf(smallManual, 'paper')).not.toContain('tel:')
  })
})
