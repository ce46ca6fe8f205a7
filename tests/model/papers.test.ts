import { expect, it } from 'vitest'
import {
  binderPapers,
  paperLengths,
  paperSize,
  sheetPapers,
  usualSheetPapers,
} from '../../src/model/papers.ts'

it('papers are as large as ANSI/ASME Y14.1 and ISO 216 say', () => {
  expect(sheetPapers.map((p) => [p, paperLengths(p).join(' ')])).toEqual([
    ['letter', '8.5in 11in'],
    ['tabloid', '11in 17in'],
    ['a4', '210mm 297mm'],
    ['a3', '297mm 420mm'],
  ])
  // Two small ones make a large one.
  for (const [small, large] of [
    ['letter', 'tabloid'],
    ['a4', 'a3'],
  ] as const)
    expect(paperSize(large)).toEqual([
      paperSize(small)[1],
      expect.closeTo(2 * paperSize(small)[0], 9),
    ])
})

it('posted sheets are printed on the papers of the binder’s own system', () => {
  expect(binderPapers).toEqual(['letter', 'a4'])
  expect(usualSheetPapers('letter')).toEqual(['letter', 'tabloid'])
  expect(usualSheetPapers('a4')).toEqual(['a4', 'a3'])
})
