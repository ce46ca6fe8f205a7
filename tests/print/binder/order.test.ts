import { describe, expect, it } from 'vitest'
import { orderParts } from '../../../src/print/binder/order.ts'

const parts = (...begins: boolean[]) => begins.map((beginsRight) => ({ beginsRight }))

describe('the order of parts', () => {
  it('puts a blank page before a part that begins on the right, but none behind the last', () => {
    expect(orderParts([3, 4, 5], { sides: 2, parts: parts(true, true, true) })).toEqual({
      hands: ['right', 'right', 'right'],
      blanks: [true, false, false],
      starts: [0, 4, 8],
    })
  })

  it('lets parts begin on the left where nobody asks for the right', () => {
    expect(orderParts([3, 4, 5], { sides: 2, parts: parts(false, false, false) })).toEqual({
      hands: ['right', 'left', 'left'],
      blanks: [false, false, false],
      starts: [0, 3, 7],
    })
  })

  it('begins a section on the right wherever the part before it ends', () => {
    expect(orderParts([3, 3, 4, 2], { sides: 2, parts: parts(false, false, true, false) })).toEqual(
      {
        hands: ['right', 'left', 'right', 'right'],
        blanks: [false, false, false, false],
        starts: [0, 3, 6, 10],
      },
    )
  })

  it('knows only right-hand pages where one side is printed', () => {
    const order = orderParts([3, 4], { sides: 1, parts: parts(true, true) })
    expect(order.hands).toEqual(['right', 'right'])
    expect(order.blanks).toEqual([false, false])
  })
})
