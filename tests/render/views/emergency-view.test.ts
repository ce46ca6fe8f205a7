import { describe, expect, it } from 'vitest'
import { renderSite } from '../../../src/render/site/render-site.ts'
import { createTemplates } from '../../../src/render/text/templates.ts'
import { emergencyView } from '../../../src/render/views/emergency-view.ts'
import { createPen } from '../../../src/render/views/pen.ts'
import { assetsFor, demoManual, demos, loadText } from '../../support/demo.ts'

const oval =
  'id: tiny\nname: Tiny Fair\nplace: { town: Nowhere }\nunits: us\npaper: letter\noval: { lap: 2640 ft, straight: 600 ft }\ncushion: { material: clay }\n'

async function pageOf(
  load: () => Promise<Awaited<ReturnType<typeof demoManual>>>,
  medium: 'screen' | 'paper',
): Promise<string> {
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

const text = async () => {
  const { manual, library } = await loadText(oval)
  if (!manual || !library) throw new Error('the facility has faults')
  return { manual, words: library.words }
}

describe('the emergency page', () => {
  it('has a line to write on below every label of which nothing is known', async () => {
    const page = await pageOf(text, 'paper')
    for (const row of page.matchAll(/<dt>([^<]*)<\/dt><dd>(.*?)<\/dd>/gs))
      expect(row[2], row[1]).toContain('class="e-fill"')
    expect([...page.matchAll(/<dt>/g)].length).toBeGreaterThanOrEqual(20)
    expect(page).toMatch(/e-dial"><span class="e-fill"/)
    expect(page).not.toContain('undefined')
  })

  it('has none where everything is known', async () =>
    expect(await pageOf(() => demoManual('larkmoor'), 'paper')).not.toContain('e-fill'))

  it('rings from a screen, and only from there', async () => {
    expect(await pageOf(() => demoManual('larkmoor'), 'screen')).toContain('href="tel:911"')
    expect(await pageOf(() => demoManual('larkmoor'), 'paper')).not.toContain('tel:')
  })

  it.each(demos)('is the first thing that the site of %s offers', async (id) => {
    const { manual, words } = await demoManual(id)
    const files = new Map(
      renderSite(manual, await assetsFor(words, 'linked')).map((f) => [f.path, f.data]),
    )
    expect(/<main.*?href="([^"]*)"/s.exec(files.get('index.html') ?? '')?.[1]).toBe(
      'emergency.html',
    )
    expect(files.get('safety.html')).toContain('href="emergency.html"')
  })
})
