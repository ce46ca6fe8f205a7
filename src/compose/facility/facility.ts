import { baseLanguage } from '../../model/language.ts'
import type { ManualFacility } from '../../model/manual/facility.ts'
import { usualSheetPapers } from '../../model/papers.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { decimalText } from '../../model/quantity/number-text.ts'
import { foot, mile } from '../../model/quantity/units.ts'
import type { Words } from '../../validate/schemas/words.ts'
import type { ComposeContext } from '../context.ts'

/** Laps that have a name in the United States, m; a lap within one percent of one is called so. */
const namedLaps: readonly { readonly lap: number; readonly name: keyof Words['ovals'] }[] = [
  { lap: mile / 2, name: 'half-mile' },
  { lap: (5 / 8) * mile, name: 'five-eighths-mile' },
  { lap: (3 / 4) * mile, name: 'three-quarter-mile' },
  { lap: mile, name: 'one-mile' },
  { lap: 2 * mile, name: 'two-mile' },
]

function ovalName(lap: number, system: UnitSystem, words: Words): string {
  if (system === 'metric') return `${Math.round(lap)} m`
  const named = namedLaps.find((n) => Math.abs(n.lap - lap) < 0.01 * lap)
  return named ? words.ovals[named.name] : `${decimalText(Math.round(lap / foot), 0)} ft`
}

/** What the manual is for, and how it is printed. */
export function composeFacility({
  facility,
  locale,
  library,
  parts,
}: ComposeContext): ManualFacility {
  const { file } = facility
  return {
    id: file.id,
    name: file.name,
    town: file.place.town,
    lang: file.language ?? baseLanguage,
    system: file.units,
    currency: locale.currency,
    paper: file.paper,
    binder: {
      sides: file.binder?.sides ?? 2,
      sections: file.binder?.sections ?? 'next',
      dividers: file.binder?.dividers ?? 'none',
      ink: file.binder?.ink ?? 'color',
    },
    sheetPapers: file.sheets?.papers ?? usualSheetPapers(file.paper),
    material: file.cushion.material,
    revision: file.revision ?? '1',
    siteAddress: file['site-address']?.replace(/\/+$/, ''),
    ovalName: ovalName(parts.geometry.lap, file.units, library.words),
  }
}
