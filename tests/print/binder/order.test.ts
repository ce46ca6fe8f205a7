import { describe, expect, it } from 'vitest'
import { orderParts } from '../../../src/print/binder/order.ts'

describe('the order of parts', () => {
  it('puts a blank page behind an odd part where all begin on the right, but not behind the last', () => {
    const order = orderParts([3, 4, 5], { sides: 2, rightHand: true })
    expect(order).toEqual({
      hands: ['right', 'right', 'right'],
      blanks: [true, false, false],
      starts: [0, 4, 8],
    })
  })

  it('lets parts begin on the left where nobody asks for the right', () => {
    expect(orderParts([3, 4, 5], { sides: 2, rightHand: false })).toEqual({
      hands: ['right', 'left', 'left'],
      blanks: [false, false, false],
      starts: [0, 3, 7],
    })
  })

  it('knows only right-hand pages where one side is printed', () => {
    expect(orderParts([3, 4], { sides: 1, rightHand: false }).hands).toEqual(['right', 'right'])
  })
})
