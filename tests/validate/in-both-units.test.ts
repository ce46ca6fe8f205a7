import { describe, expect, it } from 'vitest'
import { readYaml } from '../../src/read/read-yaml.ts'
import { checkFacility } from '../../src/validate/check-facility.ts'
import { inBothUnits } from '../../src/validate/in-both-units.ts'

const ovalOf = (units: 'us' | 'metric', oval: string) => {
  const text = `id: bare\nname: Bare Fair\nplace: { town: Nowhere }\nunits: ${units}\npaper: letter\noval: ${oval}\ncushion: { material: clay }\n`
  const tree = readYaml({ path: 'facility.yaml', text }).value
  return tree ? checkFacility(tree).problems.map((p) => p.message) : []
}

describe('a value in both units', () => {
  it('has those of the place first', () => {
    const both = { us: '2.1 in', metric: '53 mm' }
    expect(inBothUnits('us', both)).toBe('2.1 in (53 mm)')
    expect(inBothUnits(undefined, both)).toBe('2.1 in (53 mm)')
    expect(inBothUnits('metric', both)).toBe('53 mm (2.1 in)')
  })

  it('is told so of an oval that does not close', () => {
    // 2,640 ft less 2 · 600 leave 1,440 ft for two turns: 229.2 ft at three feet from the rail, 226.2 at it.
    expect(
      ovalOf('us', '{ lap: 2640 ft, straight: 600 ft, radius: 300 ft, measuring-offset: 3 ft }'),
    ).toContain('lap and straight ask for a turn radius of 226.2 ft (68.94 m) at the rail')
    expect(
      ovalOf(
        'metric',
        '{ lap: 804.672 m, straight: 182.88 m, radius: 90 m, measuring-offset: 0.9144 m }',
      ),
    ).toContain('lap and straight ask for a turn radius of 68.94 m (226.2 ft) at the rail')
  })
})
