import type { Emergency } from '../../model/manual/emergency.ts'
import type { Words } from '../../validate/schemas/words.ts'

type MapLink = { readonly href: string; readonly leads: string }

/**
 * Links that open the map of the phone itself, so that no page asks another host. `geo:` is RFC
 * 5870; iPhones know `maps:` instead.
 */
export function mapLinks(
  { address, point }: Pick<Emergency, 'address' | 'point'>,
  words: Pick<Words, 'emergency'>,
): readonly MapLink[] {
  const place = point ? `${point.latitude},${point.longitude}` : undefined
  const asked = place ?? (address === '' ? undefined : encodeURIComponent(address))
  if (asked === undefined) return []
  return [
    { href: `geo:${place ?? '0,0'}?q=${asked}`, leads: words.emergency.map },
    { href: `maps:?q=${asked}`, leads: words.emergency.mapApple },
  ]
}
