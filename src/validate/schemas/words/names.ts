import { capabilities as allCapabilities } from '../../../model/capability.ts'
import { materials as allMaterials } from '../../../model/oval-choices.ts'
import { contactRoles } from '../contacts.ts'
import { ownerships } from '../equipment.ts'
import { group } from './group.ts'

// What is called by these words is chosen in files of facilities and of the library.

/** Titles of the groups of "facility at a glance", by the group's name in the facility file. */
export const groups = group(
  'oval',
  'cushion',
  'base',
  'rail-ridge',
  'creep',
  'water',
  'crew',
  'prices',
  'delivery',
  'climate',
  'race-days',
  'place',
)

/** Titles of contacts. */
export const roles = group(...contactRoles)

export const capabilities = group(...allCapabilities)
export const materials = group(...allMaterials)

/** Ovals whose lap has a name. */
export const ovals = group(
  'half-mile',
  'five-eighths-mile',
  'three-quarter-mile',
  'one-mile',
  'two-mile',
)

/** Whose a machine is. */
export const ownership = group(...ownerships)

/** Letters behind degrees of latitude and longitude. */
export const compass = group('north', 'east', 'south', 'west')

/** Shown for each provenance of a value. */
export const provenance = group(
  'measured',
  'stated',
  'rough',
  'typical',
  'rule',
  'choice',
  'derived',
)

export const signals = group('danger', 'warning', 'caution', 'notice')
export const signalMeanings = group('danger', 'warning', 'caution', 'notice')
export const severities = group('serious', 'plan', 'note')
