import { describe, expect, it } from 'vitest'
import type { Manual } from '../../../../src/model/manual.ts'
import { renderSite } from '../../../../src/render/site/render-site.ts'
import { assetsFor } from '../../../support/demo.ts'
import { smallManual } from '../../../support/small.ts'

const { manual, words } = await smallManual()

/** The page of lessons when the one role there is taught with drawings, or without. */
async function learnPage(drawings: boolean, procedures = manual.procedures): Promise<string> {
  const courses = manual.courses.map((course) => ({ ...course, drawings }))
  const changed: Manual = { ...manual, courses, procedures }
  const files = renderSite(changed, await assetsFor(words, 'linked'))
  return String(files.find((f) => f.path === 'learn.html')?.data)
}

const lessonOf = (page: string, id: string): string =>
  new RegExp(`<article class="lesson" id="${id}".*?</article>`, 's').exec(page)?.[0] ?? ''

/** All lessons look at one drawing. */
const alike = manual.procedures.map((p) => ({
  ...p,
  sheet: { ...p.sheet, drawing: 'passes-harrow' as const },
}))

describe('the drawing of a lesson', () => {
  it('stands with it where its role is taught with drawings', async () => {
    const lesson = lessonOf(await learnPage(true), 'harrow')
    expect(lesson).toContain('<figure class="drawing">')
    expect(lesson).not.toContain('class="look"')
  })

  it('is one touch away where it is not', async () => {
    const page = await learnPage(false, alike)
    expect(page).not.toContain('<figure')
    for (const { id } of manual.procedures)
      expect(lessonOf(page, id)).toMatch(
        /class="look">Look at <a class="cite" href="procedures\/harrow\.html#drawing-passes-harrow">/,
      )
  })

  it('stands on the page once, and the other lessons lead there', async () => {
    const page = await learnPage(true, alike)
    expect(page.match(/<figure/g)).toHaveLength(1)
    expect(page.match(/id="drawing-passes-harrow"/g)).toHaveLength(1)
    expect(page.match(/class="elsewhere">Look at <a class="cite" href="#drawing-/g)).toHaveLength(
      manual.procedures.length - 1,
    )
  })

  it('stands there wherever the questions are about it', async () => {
    const asked = manual.procedures.map((p) => ({
      ...p,
      training: { ...p.training, drawing: 'passes-harrow' as const },
    }))
    expect(await learnPage(false, asked)).toContain('<figure class="drawing">')
  })
})
