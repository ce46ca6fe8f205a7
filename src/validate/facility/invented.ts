import { entryExamples } from '../../model/entry-about.ts'
import type { Path } from '../../read/read-yaml.ts'
import { demoIds } from './demos.ts'

/** Numbers that are kept for stories: nobody answers them. */
const inventedNumber = /555-?01\d\d\b/

/** People, firms and places of the demo fairs, which are invented, with the ways to them. */
const inventedTexts: ReadonlySet<string> = new Set([
  'Dale Hasterlin',
  'Harlan Voss',
  'Marian Teague (speed committee)',
  'Lou Fenwick',
  'Ines Calloway',
  'Dr. Wren Abbott',
  'Pruitt Stable (low trailer)',
  'Tannerd Stone',
  'Theo Marchbank',
  'Anneke Brandvold',
  'Hollis Arkwright',
  'Corwin Pell (racing committee)',
  'Isolde Marchetti',
  'Tobias Quarrel',
  'Dr. Sunniva Hale',
  'Redbank Clay and Gravel',
  '9 Society Road',
  'From Fairground Lane take the second drive, past the water tower, 300 yards to the gate.',
  'From Lantern Mill Road turn in at the blue arch and keep left along the barns.',
  'the flagpole at the second drive',
  'Three Creeks Equine Clinic',
  'Lakes Equine Hospital',
])

/** Of the gates of the demos, degrees north and east. */
const inventedPositions: readonly number[] = [40.82942, -89.08101, 44.31127, -88.72206]

const groups: readonly unknown[] = ['name', 'place', 'contacts', 'emergency', 'site-address']

/** Entries whose example is right in many places: a choice, or what is dialed in all of a country. */
const rightElsewhere: readonly string[] = [
  'place.time-zone',
  'contacts.role',
  'emergency.number',
  'emergency.stops-racing',
]

/** Groups that are printed where somebody is to be called or found. */
const filledIn: readonly unknown[] = ['place', 'contacts', 'emergency']

/** What stands as an example in the file in which every entry is explained, in these groups. */
const examples: ReadonlySet<string> = new Set(
  entryExamples()
    .filter(({ path }) => filledIn.includes(path.split('.')[0]) && !rightElsewhere.includes(path))
    .flatMap(({ example }) =>
      /^\[.*\]$/.test(example) ? example.slice(1, -1).split(', ') : [example],
    ),
)

/** What no place is called, and nobody. */
const noName = /\bOur (?:Town|Fair)\b|^A\. Name$|^some text$|^[.…\s]+$/

/**
 * Whether something is an example of the file in which every entry is explained, left or taken as it
 * stands there.
 * @param at Where it stands; only the place, contacts, the emergency page and who measured are meant.
 */
export function isExample(at: Path, value: unknown): boolean {
  if (value === 'A. Name') return true
  if (!filledIn.includes(at[0])) return false
  const text = String(value).trim()
  return examples.has(text) || (typeof value === 'string' && noName.test(text))
}

/**
 * Whether something that must be rung, driven to or looked up is that of a demo, or an example.
 * @param at Where it stands; what is no contact, place or emergency is never meant.
 */
export function isInvented(at: Path, value: unknown): boolean {
  if (isExample(at, value)) return true
  if (!groups.includes(at[0])) return false
  if (typeof value === 'number') return at[0] === 'emergency' && inventedPositions.includes(value)
  if (typeof value !== 'string') return false
  const isTown = demoIds.some((demo) => new RegExp(`\\b${demo}\\b`, 'i').test(value))
  return isTown || inventedNumber.test(value) || inventedTexts.has(value.trim())
}
