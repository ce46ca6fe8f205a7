/**
 * What a machine or a set of tools can do on a track. Procedures ask for these, never for a machine
 * by name.
 */
export const capabilities = [
  /** Blade that draws material up the slope and holds a grade: grader, tractor with rear blade. */
  'grade',
  /** Teeth that cut a cushion to a set depth and stir it: drag harrow. */
  'harrow',
  /** Powered or heavy cutter that loosens a hard layer to a controlled depth: track conditioner. */
  'condition',
  /** Light screen, mat or float that flattens the top without digging. */
  'screen',
  /** Truck whose tires roll the surface. */
  'roll-tires',
  /** Steel or rubber drum roller. */
  'roll-drum',
  /** Tank and spray bar: water truck or trailer. */
  'spray',
  /** Loader or bucket that fills a truck or spreads a heap. */
  'load',
  /** Truck that carries material. */
  'haul',
  /** Plate or jumping tamper for patches. */
  'tamp',
] as const

export type Capability = (typeof capabilities)[number]
