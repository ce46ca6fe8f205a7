import { expect, it } from 'vitest'
import { composeChapters } from '../../../src/compose/texts/chapters.ts'
import { composeTerms } from '../../../src/compose/texts/terms.ts'
import { contextFor, halfMile } from '../support/context.ts'

it('terms stand in alphabetical order, chapters in the order that they ask for', async () => {
  const context = await contextFor(halfMile)
  const terms = composeTerms(context).map((t) => t.term)
  expect(terms).toEqual([...terms].sort((a, b) => a.localeCompare(b, 'en')))
  const order = new Map(context.library.chapters.map((c) => [c.value.id, c.value.order]))
  const chapters = composeChapters(context).map((c) => order.get(c.id) ?? 0)
  expect(chapters.length).toBeGreaterThan(1)
  expect(chapters).toEqual([...chapters].sort((a, b) => a - b))
})
