import * as z from 'zod'
import { entries, group, holding } from './group.ts'

export const plans = z.strictObject({
  ...entries(
    'about',
    'stockpile',
    'across',
    'sample',
    'group',
    'texture',
    'feel',
    'notTold',
    'noSizes',
    'noClay',
  ),
  past: holding('date'),
})

export const forms = z.strictObject({
  ...entries('title', 'row', 'who', 'moment', 'kept', 'rail', 'middle', 'outside', 'line'),
  page: holding('page', 'pages'),
  /** What is said of a line to sign on. */
  signature: holding('who'),
})

/**
 * Plain meanings of the symbols of soil groups, the classes of texture, and how each kind of texture
 * feels when it is squeezed.
 */
export const soils = z.strictObject({
  groups: group('GW', 'GP', 'GM', 'GC', 'SW', 'SP', 'SM', 'SC', 'ML', 'CL', 'MH', 'CH'),
  textures: group(
    'sand',
    'loamy sand',
    'sandy loam',
    'sandy clay loam',
    'loam',
    'silt loam',
    'silt',
    'clay',
    'sandy clay',
    'silty clay',
    'clay loam',
    'silty clay loam',
  ),
  feel: group('coarse', 'moderately-coarse', 'medium', 'fine'),
})
