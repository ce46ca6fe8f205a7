import type { Computed } from '../compute/compute-facility.ts'
import type { Facility } from '../validate/check-facility.ts'
import type { Circumstances } from './applies.ts'
import { namedNumber } from './context.ts'

/** What a facility is, as far as the applicability of content goes. */
export const circumstancesOf = ({ file }: Facility, computed: Computed): Circumstances => ({
  surface: file.cushion.material,
  rail: file.oval.rail ?? 'pylons',
  units: file.units,
  capabilities: computed.capabilities,
  si: (name) => namedNumber(name, computed),
})
