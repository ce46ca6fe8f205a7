import type { Problem } from '../../../model/problem.ts'
import type { ParsedFacility } from '../parsed-facility.ts'
import { written } from './valued.ts'

type Box = {
  readonly latitude: readonly [number, number]
  readonly longitude: readonly [number, number]
}

/** Where a currency is the money of the country, degrees, with what lies far off left out. */
const countries: Readonly<Record<string, Box>> = {
  USD: { latitude: [18, 66], longitude: [-170, -64] },
  CAD: { latitude: [41.6, 66], longitude: [-141, -52] },
  EUR: { latitude: [27, 66], longitude: [-32, 35] },
  GBP: { latitude: [49, 61], longitude: [-9, 2] },
  AUD: { latitude: [-44, -10], longitude: [112, 154] },
  NZD: { latitude: [-48, -34], longitude: [166, 179] },
  SEK: { latitude: [55, 66], longitude: [10, 25] },
  NOK: { latitude: [57, 66], longitude: [4, 32] },
  DKK: { latitude: [54, 63], longitude: [-8, 16] },
}

const within = (value: number | undefined, [low, high]: readonly [number, number]): boolean =>
  value === undefined || (value >= low && value <= high)

/** In feet and inches people race in America, whose longitudes are negative: a lost minus is asked about. */
function east({ file, tree }: ParsedFacility): Problem[] {
  const { longitude, 'time-zone': zone } = file.place
  const gate = file.emergency?.coordinates?.longitude
  // Where the two can be held against each other, or against the clock of race days, this is done.
  const isHeld = zone !== undefined && (file['race-days'] ?? []).length > 0
  const [path, value] =
    longitude === undefined
      ? [['emergency', 'coordinates', 'longitude'], gate]
      : [['place', 'longitude'], isHeld ? undefined : longitude]
  if (file.units !== 'us' || value === undefined || value <= 0) return []
  return [
    tree.problem(
      tree.placeOf(path),
      'facility/odd',
      `longitude ${value} is east of Greenwich, and all of America lies west of it: is the minus missing?`,
      {
        hint: `write longitude: -${value}; where the fair is not in America, leave it`,
        severity: 'warning',
      },
    ),
  ]
}

/** The place lies where the currency is money: a sign or two digits that changed places show. */
export function checkPlace(parsed: ParsedFacility): Problem[] {
  const { file, tree } = parsed
  const { currency } = file
  const box = currency === undefined ? undefined : countries[currency]
  if (!box) return east(parsed)
  return (['latitude', 'longitude'] as const).flatMap((key) =>
    within(file.place[key], box[key])
      ? []
      : [
          tree.problem(
            tree.placeOf(['place', key]),
            'facility/odd',
            `${key} ${written(parsed, ['place', key])} is not where the currency is ${currency}: from ${box[key].join(' to ')}`,
            { hint: 'north and east are positive, south and west negative', severity: 'warning' },
          ),
        ],
  )
}
