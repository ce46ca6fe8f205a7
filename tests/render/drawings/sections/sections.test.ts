import { expect, it } from 'vitest'
import { renderDrawings } from '../../../../src/render/drawings/drawings.ts'
import { changedSmallManual } from '../../../support/small.ts'

/** Where words of a drawing begin, and the left edge of its largest circle, points. */
async function placesIn(widths: string) {
  const { manual, words } = await changedSmallManual((text) =>
    text.replace('{ straights: 60 ft, turns: 70 ft }', widths),
  )
  const svg = renderDrawings(manual, words)['sections']?.at('page') ?? ''
  const rises = [...svg.matchAll(/<text x="([\d.]+)"[^>]*>above the rail</g)].map((m) =>
    Number(m[1]),
  )
  const discs = [...svg.matchAll(/<circle cx="([\d.]+)" cy="[\d.]+" r="([\d.]+)"/g)].map((m) => ({
    left: Number(m[1]) - Number(m[2]),
    r: Number(m[2]),
  }))
  return { straight: rises.at(-1) ?? 0, glass: discs.sort((a, b) => b.r - a.r)[0]?.left ?? 0 }
}

it.each([
  '{ straights: 60 ft, turns: 70 ft }',
  '{ straights: 70 ft, turns: 70 ft }',
  '{ straights: 80 ft, turns: 60 ft }',
])('keeps what is said beside the straight clear of the glass: %s', async (widths) => {
  const { straight, glass } = await placesIn(widths)
  expect(straight).toBeGreaterThan(200)
  // Fourteen letters at 9 points take about 58.
  expect(glass - straight).toBeGreaterThan(58)
})
