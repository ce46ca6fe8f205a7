import { beforeEach, describe, expect, it, vi } from 'vitest'

let module: typeof import('../../src/model/remembered.ts')
beforeEach(async () => {
  vi.resetModules()
  module = await import('../../src/model/remembered.ts')
})

describe('what was made of texts', () => {
  it('is made once, or taken from what was made before', () => {
    let made = 0
    const shout = module.rememberOf('texts', (text) => {
      made++
      return text.toUpperCase()
    })
    module.recall(() => ({
      ...{ formulas: new Map(), templates: new Map(), ovals: new Map() },
      texts: new Map([['before', 'kept']]),
    }))
    expect([shout('a'), shout('a'), shout('before')]).toEqual(['A', 'A', 'kept'])
    expect(made).toBe(1)
    expect(module.remembered().isNew).toBe(true)
    expect([...module.remembered().all.texts]).toEqual([
      ['before', 'kept'],
      ['a', 'A'],
    ])
  })

  it('is let go where many manuals have been made since, and what all of them ask for stays', () => {
    const made: string[] = []
    const same = module.rememberOf('formulas', (text) => {
      made.push(text)
      return text
    })
    for (let manual = 0; manual < 200; manual++) {
      for (let i = 0; i < 300; i++) same(`of all ${i}`)
      for (let i = 0; i < 100; i++) same(`of ${manual} alone ${i}`)
    }
    const { formulas } = module.remembered().all
    expect(formulas.size).toBeLessThanOrEqual(4000)
    // Texts of the first are gone, and those of all were made once.
    expect(made.filter((text) => text === 'of all 7')).toHaveLength(1)
    expect(formulas.has('of 0 alone 7')).toBe(false)
    expect(formulas.has('of 199 alone 7')).toBe(true)
  })
})
