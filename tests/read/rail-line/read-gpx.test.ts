import { describe, expect, it } from 'vitest'
import { readGpx } from '../../../src/read/rail-line/read-gpx.ts'

const gpx = (body: string) =>
  readGpx({
    path: 'rail.gpx',
    text: `<?xml version="1.0"?>\n<gpx version="1.1" xmlns="http://www.topografix.com/GPX/1/1">\n${body}\n</gpx>\n`,
  })

describe('a line in GPX', () => {
  it('is the track, segments joined, with the places of its points', () => {
    const { value } = gpx(
      '<wpt lat="1" lon="1"/><trk><trkseg>\n<trkpt lat="40" lon="-84"/>\n<trkpt lat="40.001" lon="-84"><ele>3</ele></trkpt></trkseg><trkseg><trkpt lat="40.002" lon="-84.1"/></trkseg></trk>',
    )
    expect(value?.map((p) => [p.latitude, p.longitude])).toEqual([
      [40, -84],
      [40.001, -84],
      [40.002, -84.1],
    ])
    expect(value?.[1]?.place.line).toBe(5)
  })

  it('is the route where there is no track', () =>
    expect(gpx('<rte><rtept lat="40" lon="-84"/></rte>').value).toHaveLength(1))

  it('takes nothing in from elsewhere, and says so in our words', () => {
    const { value, problems } = readGpx({
      path: 'rail.gpx',
      text: '<?xml version="1.0"?>\n<!DOCTYPE gpx [<!ENTITY a "40"><!ENTITY f SYSTEM "file:///etc/passwd">]>\n<gpx><trk>&f;</trk></gpx>',
    })
    expect(value).toBeUndefined()
    expect(problems).toMatchObject([
      { message: 'an entity (& … ;) that XML does not have', place: { line: 3 } },
    ])
  })

  it('is refused when it is broken, empty, or lacks a coordinate', () => {
    expect(gpx('<trk><trkseg>').problems).toMatchObject([
      { code: 'file/format', place: { line: 4 } },
    ])
    expect(gpx('<trk/>').problems).toMatchObject([{ code: 'file/empty' }])
    expect(gpx('<rte>\n<rtept lat="forty" lon="-84"/></rte>').problems).toMatchObject([
      { code: 'file/format', place: { line: 4 } },
    ])
  })

  it.each(['\r', '\r\n', '\u2028', '\u0085'])('has its places where lines end with %j', (end) => {
    const lines = [
      '<gpx>',
      ' <trk>',
      '  <trkpt lat="1" lon="2"/>',
      '  <trkpt lat="1"/>',
      ' </trk></gpx>',
    ]
    const text = lines.join(end)
    const [problem] = readGpx({ path: 'rail.gpx', text }).problems
    const { line = 0, column = 0 } = problem?.place ?? {}
    // The end of the tag that lacks a coordinate.
    expect((text.split('\n')[line - 1] ?? '').slice(0, column)).toMatch(/<trkpt lat="1"\/>$/)
  })
})
