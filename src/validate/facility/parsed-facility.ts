import type { SourceTree } from '../../read/read-yaml.ts'
import type { FacilityFile } from '../schemas/facility.ts'

/** A facility file that has passed its schema, with the tree that knows where each entry stands. */
export type ParsedFacility = { readonly file: FacilityFile; readonly tree: SourceTree }
