import { describe, expect, it } from 'vitest'
import { readGeoJson } from '../../../src/read/rail-line/read-geojson.ts'

const json = (value: unknown) =>
  readGeoJson({ path: 'rail.geojson', text: JSON.stringify(value, null, 1) })

const line = [
  [-84, 40],
  [-84.001, 40],
  [-84.001, 40.001],
]

describe('a line in GeoJSON', () => {
  it('is found alone, in a feature, in a collection, or as the outside of a polygon', () => {
    for (const found of [
      { type: 'LineString', coordinates: line },
      { type: 'Feature', properties: {}, geometry: { type: 'LineString', coordinates: line } },
      {
        type: 'FeatureCollection',
        features: [
          { type: 'Feature', properties: {}, geometry: { type: 'Point', coordinates: [0, 0] } },
          { type: 'Feature', properties: {}, geometry: { type: 'Polygon', coordinates: [line] } },
        ],
      },
    ])
      expect(json(found).value?.map((p) => [p.longitude, p.latitude])).toEqual(line)
  })

  it('is refused with the line of the fault', () => {
    expect(
      json({
        type: 'LineString',
        coordinates: [
          [-84, 40],
          ['-84', 40],
        ],
      }).problems,
    ).toMatchObject([{ code: 'file/format', place: { line: 8 } }])
    expect(json({ type: 'Point', coordinates: [-84, 40] }).problems).toMatchObject([
      { code: 'file/empty' },
    ])
    expect(
      readGeoJson({ path: 'rail.geojson', text: '{ "type": "LineString", ' }).problems[0]?.code,
    ).toBe('yaml/syntax')
  })

  it.each(['1e999', '-1e400', '.nan', 'null'])('is refused where a coordinate is %s', (odd) =>
    expect(
      readGeoJson({
        path: 'rail.geojson',
        text: `{ "type": "LineString",\n "coordinates": [[-84, 40],\n [-84.001, ${odd}], [-84, 41]] }`,
      }),
    ).toMatchObject({ value: undefined, problems: [{ place: { line: 3 } }] }),
  )
})
