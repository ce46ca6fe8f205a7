import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Piece, placePieces } from '../../../../src/print/binder/openings/place-pieces.ts'

const whole = (part: Piece['part'], height: number): Piece => ({ part, height, steps: [] })

const method = (...steps: number[]): Piece => ({
  part: 'method',
  height: 20 + steps.reduce((sum, h) => sum + h, 0),
  steps,
})

/** Which pieces are on each page; `2:0-3` for the first three steps of piece 2. */
const shown = (pieces: readonly Piece[], height = 900): readonly string[] | undefined =>
  placePieces([pieces], height)?.pages.map((page) =>
    page
      .map(({ piece, steps }) => (steps ? `${piece}:${steps.from}-${steps.until}` : `${piece}`))
      .join(' '),
  )

describe('a procedure on its pages', () => {
  it('has on the left what is decided and on the right the work, with the ends at its foot', () => {
    expect(
      shown([
        whole('decide', 500),
        whole('box', 100),
        method(100, 100),
        whole('failures', 150),
        whole('records', 50),
        whole('why', 80),
        whole('ends', 120),
      ]),
    ).toEqual(['0 3 5 4', '1 2 6'])
  })

  it('has its lesson on the left, on the empty page of a leaf, or on none', () => {
    const short = [whole('decide', 500), whole('box', 100), method(100, 100), whole('lesson', 300)]
    expect(shown(short)).toEqual(['0 3', '1 2'])
    const long = method(300, 300, 200)
    const three = [whole('decide', 800), whole('box', 50), long, long, whole('lesson', 300)]
    expect(shown(three)).toEqual(['0', '1 2', '3', '4'])
    expect(shown([whole('decide', 800), method(300, 300), whole('lesson', 300)])).toEqual([
      '0',
      '1',
    ])
  })

  it('goes on overleaf between two methods only', () => {
    const long = method(200, 200, 200)
    expect(
      shown([whole('decide', 800), whole('box', 100), long, long, whole('ends', 120)]),
    ).toEqual(['0', '1 2', '3 4'])
  })

  it('begins the work on the left where that spares an opening', () => {
    expect(
      shown([whole('decide', 300), whole('box', 100), method(200, 200), method(400, 400)]),
    ).toEqual(['0 1 2', '3'])
  })

  it('lets a method go on to the facing page where it is longer than what is left', () => {
    expect(shown([whole('decide', 300), whole('box', 100), method(300, 100, 300, 300)])).toEqual([
      '0 1 2:0-2',
      '2:2-4',
    ])
  })

  it('takes a closer setting only where that spares an opening', () => {
    const wide = [whole('decide', 500), whole('box', 100), method(500, 100), whole('ends', 400)]
    const close = [whole('decide', 450), whole('box', 90), method(400, 90), whole('ends', 280)]
    expect(placePieces([wide, close], 900)?.setting).toBe(0)
    expect(placePieces([wide, close], 880)?.setting).toBe(1)
  })

  it('does not turn a leaf between the hazards and the first step', () => {
    expect(
      shown([
        whole('decide', 600),
        whole('box', 200),
        method(300, 450),
        method(400),
        whole('ends', 100),
      ]),
    ).toEqual(['0 1', '2', '3 4'])
  })

  it('cannot place what is higher than a page', () => {
    expect(placePieces([[whole('decide', 901)]], 900)).toBeUndefined()
  })

  const piece = (...parts: Piece['part'][]) =>
    fc.record({
      part: fc.constantFrom(...parts),
      height: fc.integer({ min: 20, max: 400 }),
      steps: fc.constant([]),
    })
  const procedures = fc
    .tuple(
      piece('decide'),
      piece('box'),
      fc.array(fc.array(fc.integer({ min: 20, max: 120 }), { minLength: 1, maxLength: 14 }), {
        minLength: 1,
        maxLength: 4,
      }),
      fc.array(piece('drawing'), { maxLength: 2 }),
      piece('failures'),
      piece('records'),
      piece('why'),
      piece('ends'),
    )
    .map(([decide, box, methods, drawings, ...others]) => [
      decide,
      box,
      ...methods.map((steps) => method(...steps)),
      ...drawings,
      ...others,
    ])

  it('loses nothing, overfills no page and never tears a method over a leaf', () => {
    fc.assert(
      fc.property(procedures, (pieces) => {
        const placed = placePieces([pieces], 900)
        fc.pre(placed !== undefined)
        const pages = placed?.pages ?? []
        const all = pages.flatMap((page, at) => page.map((p) => ({ ...p, at })))
        for (const [i, { part, height, steps }] of pieces.entries()) {
          const own = all.filter((p) => p.piece === i)
          if (part === 'why' && own.length === 0) {
            // What must be there, in the place of the reasons, would need another opening.
            const kept = pieces.map((p) =>
              p.part === 'why' ? { ...p, part: 'records' as const } : p,
            )
            const longer = placePieces([kept], 900)?.pages.length ?? Number.POSITIVE_INFINITY
            expect(Math.ceil(longer / 2)).toBeGreaterThan(Math.ceil(pages.length / 2))
            continue
          }
          if (own.length === 1) {
            expect(own[0]?.steps).toBeUndefined()
            continue
          }
          const [left, right] = own
          expect(own).toHaveLength(2)
          expect((left?.at ?? 1) % 2, 'begins on the left').toBe(0)
          expect(right?.at, 'goes on on the page that faces it').toBe((left?.at ?? 0) + 1)
          expect(left?.steps?.from).toBe(0)
          expect(right?.steps).toEqual({ from: left?.steps?.until, until: steps.length })
          expect(height).toBeGreaterThan(0)
        }
        for (const page of pages) {
          const used = page.map(({ piece: i, steps }) => {
            const { height = 0, steps: heights = [] } = pieces[i] ?? {}
            if (!steps) return height
            const sum = (list: readonly number[]): number => list.reduce((a, h) => a + h, 0)
            const head = steps.from === 0 ? height - sum(heights) : 0
            return head + sum(heights.slice(steps.from, steps.until))
          })
          expect(used.reduce((sum, h) => sum + h, 0)).toBeLessThanOrEqual(900)
        }
        const methods = all.filter((p) => pieces[p.piece]?.part === 'method').map((p) => p.piece)
        expect(methods).toEqual([...methods].sort((a, b) => a - b))
        expect(all.find((p) => pieces[p.piece]?.part === 'decide')?.at).toBe(0)
      }),
    )
  })
})
