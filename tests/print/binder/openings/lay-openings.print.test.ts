import { describe, expect, it } from 'vitest'
import { layOpenings } from '../../../../src/print/binder/openings/lay-openings.ts'
import { textArea } from '../../../../src/render/binder/page-rules.ts'
import { renderBinder } from '../../../../src/render/binder/render-binder.ts'
import { assetsFor, demoManual } from '../../../support/demo.ts'
import { usePress } from '../../../support/test-press.ts'

const press = usePress()

/** For every page of a procedure, the ways of working with steps on it. */
function waysInPage(): {
  readonly id: string
  readonly lessons: number
  readonly pages: readonly (readonly string[])[]
}[] {
  return [...document.querySelectorAll('.procedure')].map((article) => ({
    id: article.id,
    // On a page of any procedure, or at the end of the section.
    lessons: [
      ...document.querySelectorAll(
        `:is(.side, .lessons) > .lesson:has(#${article.id.replace('opening-', 'lesson-')})`,
      ),
    ].length,
    pages: [...article.querySelectorAll('.side')].map((side) =>
      [...side.querySelectorAll('.step')].map((step) => step.id.replace(/-step-\d+$/, '')),
    ),
  }))
}

describe.each(['larkmoor', 'brambleford', 'ostmere'])('openings of %s', (id) => {
  it('turn no leaf in the middle of a way of working, and lose no step and no lesson', async () => {
    const { manual, words } = await demoManual(id)
    const { parts } = renderBinder(manual, await assetsFor(words, 'inline'))
    const { width, height } = textArea(manual.facility.paper)
    const area = { width: width * 96, height: height * 96 }
    const sections = parts.filter((p) => manual.sections.some((s) => s.id === p.id))
    const laid = await Promise.all(
      sections.map((part) =>
        press().run({ css: part.css.right, body: part.body }, area, async (page) => {
          await layOpenings(page, area)
          return page.evaluate(waysInPage)
        }),
      ),
    )
    for (const { id: procedure, lessons, pages } of laid.flat()) {
      expect(lessons, `lesson of ${procedure}`).toBe(1)
      const { methods = [] } = manual.procedures.find((p) => `opening-${p.id}` === procedure) ?? {}
      expect(pages.flat()).toHaveLength(methods.reduce((sum, m) => sum + m.steps.length, 0))
      const openings = pages.reduce<Set<string>[]>((all, ways, i) => {
        const opening = all[Math.floor(i / 2)] ?? new Set<string>()
        for (const way of ways) opening.add(way)
        all[Math.floor(i / 2)] = opening
        return all
      }, [])
      for (const way of new Set(pages.flat()))
        expect(
          openings.filter((opening) => opening.has(way)),
          `${procedure}: ${way}`,
        ).toHaveLength(1)
    }
  })
})
