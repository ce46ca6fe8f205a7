import type { Chance } from '../chance.ts'
import { oddNumbers } from './hostile.ts'
import { type Mutations, ofText } from './mutation.ts'

const number = /-?\d+\.\d+/g

/** A change of one number with a point in it, as those of places have. */
const degree = (other: (text: string, all: readonly string[], chance: Chance) => string) =>
  ofText((text, chance) => {
    const found = [...text.matchAll(number)]
    if (found.length === 0) return text
    const { index, 0: old } = chance.oneOf(found)
    const all = found.map(([n]) => n)
    return text.slice(0, index) + other(old, all, chance) + text.slice(index + old.length)
  })

/** The points of a GPX or GeoJSON text, each whole. */
const point = /<trkpt[\s\S]*?<\/trkpt>|\[\s*-?\d[\d.]*,\s*-?\d[\d.]*\s*\]/g

const points = (change: (all: readonly string[], chance: Chance) => readonly string[]) =>
  ofText((text, chance) => {
    const found = [...text.matchAll(point)].map(([p]) => p)
    const [first] = found
    const end = found.at(-1)
    if (first === undefined || end === undefined) return text
    const between = first.startsWith('<') ? '\n' : ',\n'
    return (
      text.slice(0, text.indexOf(first)) +
      change(found, chance).join(between) +
      text.slice(text.lastIndexOf(end) + end.length)
    )
  })

const doctype = `<!DOCTYPE gpx [<!ENTITY a "zq"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;"><!ENTITY c SYSTEM "file:///etc/hostname">]>`

/** Changes of a walked line. */
export const meaningsOfPoints: Mutations = [
  degree((_, __, chance) => chance.oneOf(oddNumbers)),
  degree((_, all, chance) => chance.oneOf(all)),
  degree((old, _, chance) => String(Number(old) + (chance.below(2001) - 1000) / 1e7)),
  degree((old, _, chance) => String(Number(old) + (chance.below(2001) - 1000) / 1e5)),
  degree((old) => `-${old}`),
  points((all, chance) => all.toSpliced(chance.below(all.length), 1)),
  points((all, chance) => all.toSpliced(chance.below(all.length), 0, chance.oneOf(all))),
  points((all, chance) => all.slice(chance.below(all.length))),
  points((all, chance) => all.filter((_, i) => i % (1 + chance.below(8)) === 0)),
  points((all) => all.toReversed()),
  points((all) => [...all, ...all]),
  points((all) => all.toSorted()),
  points(([first = '']) => Array.from({ length: 40 }, () => first)),
  // Latitude and longitude have changed places.
  ofText((text) =>
    text
      .replace(/lat="([^"]*)" lon="([^"]*)"/g, 'lat="$2" lon="$1"')
      .replace(/\[(-?[\d.]+), ?(-?[\d.]+)\]/g, '[$2, $1]'),
  ),
  ofText((text, chance) =>
    text.replace('?>', `?>${doctype}`).replace('Rail', chance.oneOf(['&a;', '&b;', '&c;'])),
  ),
  ofText((text, chance) =>
    text
      .replaceAll('trkpt', chance.oneOf(['rtept', 'wpt', 'x:trkpt', 'zq']))
      .replace(
        'LineString',
        chance.oneOf(['Polygon', 'MultiLineString', 'Point', 'GeometryCollection']),
      ),
  ),
]
