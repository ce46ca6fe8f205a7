import { describe, expect, it } from 'vitest'
import { readGeoJson } from '../../src/read/rail-line/read-geojson.ts'
import { readGpx } from '../../src/read/rail-line/read-gpx.ts'
import { readTable } from '../../src/read/read-table.ts'
import { readYaml } from '../../src/read/read-yaml.ts'

const saidOf = (text: string) => readYaml({ path: 'facility.yaml', text }).problems

describe('a file that nobody has written', () => {
  it('is refused for a line too long, or one line too many, with its place', () => {
    expect(saidOf(`a: 1\nb: ${'x'.repeat(10_000)}\n`)).toMatchObject([
      { code: 'file/too-large', place: { line: 2, column: 1 } },
    ])
    expect(saidOf('a: 1\n'.repeat(10_001))).toMatchObject([
      { code: 'file/too-large', place: { line: 10_001 } },
    ])
    const table = { path: 'a.csv', text: `date,by\n${'2027-06-01,A\n'.repeat(10_000)}` }
    expect(readTable(table).problems).toMatchObject([{ code: 'file/too-large' }])
  })

  it('is refused for more text than anybody has to say', () =>
    expect(saidOf(`a: ${'x'.repeat(5000)}\n`.repeat(70))).toMatchObject([
      { code: 'file/too-large', place: { line: 1, column: 1 } },
    ]))

  it.each([
    ['brackets', `a: ${'['.repeat(5000)}`],
    ['braces', `a: ${'{'.repeat(5000)}`],
    ['dashes', '- '.repeat(4000)],
    ['questions', '? '.repeat(4000)],
    ['indents', Array.from({ length: 900 }, (_, i) => `${' '.repeat(i)}a:`).join('\n')],
  ])('is refused where groups stand in each other too deep: %s', (_, text) =>
    expect(saidOf(text)).toMatchObject([{ code: 'file/too-large' }]),
  )

  it('is refused where its entries stand for each other, however many that would make', () => {
    const bomb = ['a: &a [x, x, x, x]', 'b: &b [*a, *a, *a, *a]', 'c: [*b, *b, *b, *b]'].join('\n')
    expect(saidOf(bomb)).toMatchObject([{ code: 'yaml/alias', place: { line: 1 } }])
  })

  it('is refused for more points than anybody walks', () => {
    const points = Array.from({ length: 20_000 }, (_, i) => [i / 1e6, i / 1e6])
    const text = JSON.stringify({ type: 'LineString', coordinates: points })
    expect(readGeoJson({ path: 'rail.geojson', text }).problems).toMatchObject([
      { code: 'file/too-large', place: { line: 1, column: 1 } },
    ])
    const gpx = `<gpx><trk>${'<trkpt lat="1" lon="1"/>'.repeat(20_000)}</trk></gpx>`
    expect(readGpx({ path: 'rail.gpx', text: gpx }).problems).toMatchObject([
      { code: 'file/too-large' },
    ])
  })

  it('is refused as GeoJSON where features stand in features without end', () => {
    for (const part of [
      '{"type":"Feature","geometry":',
      '{"type":"FeatureCollection","features":[',
    ])
      expect(
        readGeoJson({ path: 'rail.geojson', text: part.repeat(30_000) }).problems,
      ).toMatchObject([{ code: 'file/too-large' }])
  })

  it('is read as GeoJSON although a program has put all of it into one line', () => {
    const points = Array.from({ length: 900 }, (_, i) => [-89 + i / 1e5, 40.123456 + i / 1e5])
    const text = JSON.stringify({ type: 'LineString', coordinates: points })
    expect(text.length).toBeGreaterThan(10_000)
    const { value } = readGeoJson({ path: 'rail.geojson', text })
    expect(value).toHaveLength(900)
    expect(value?.[0]?.place).toMatchObject({ line: 1 })
  })
})
