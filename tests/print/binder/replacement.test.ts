import { describe, expect, it } from 'vitest'
import { compareBinders, type LaidPage } from '../../../src/print/binder/replacement.ts'

const pages = (...texts: readonly string[]): LaidPage[] =>
  texts.map((t) => ({ label: t.split('=')[0] ?? '', print: t.split('=')[1] ?? '' }))
const labels = (leaves: readonly { readonly labels: readonly string[] }[]): string[] =>
  leaves.map((l) => l.labels.join(' '))

describe('leaves to exchange', () => {
  it('are none between a binder and itself', () => {
    const same = pages('1-1=a', '1-2=b', '2-1=c')
    expect(compareBinders(same, same, 2)).toEqual({ takeOut: [], putIn: [] })
  })

  it('are both pages of the leaf on which one has changed', () => {
    const { takeOut, putIn } = compareBinders(
      pages('1-1=a', '1-2=b', '1-3=c', '1-4=d'),
      pages('1-1=a', '1-2=b', '1-3=c', '1-4=x'),
      2,
    )
    expect(labels(takeOut)).toEqual(['1-3 1-4'])
    expect(putIn.map((l) => l.pages)).toEqual([[2, 3]])
  })

  it('are single pages where one side is printed', () => {
    const { putIn } = compareBinders(pages('1-1=a', '1-2=b'), pages('1-1=a', '1-2=x'), 1)
    expect(labels(putIn)).toEqual(['1-2'])
  })

  it('come in where a section has grown, and go out where one has shrunk, without moving the others', () => {
    const { takeOut, putIn } = compareBinders(
      pages('1-1=a', '1-2=b', '2-1=c', '2-2=d', '2-3=e', '2-4=f'),
      pages('1-1=a', '1-2=b', '1-3=n', '1-4=', '2-1=c', '2-2=d'),
      2,
    )
    expect(labels(takeOut)).toEqual(['2-3 2-4'])
    expect(labels(putIn)).toEqual(['1-3 1-4'])
  })
})
