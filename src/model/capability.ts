/**
 * What a machine or a set of tools can do on a track. Procedures ask for these, never for a machine
 * by name.
 */
export const capabilities = [
  /** Blade that shapes the whole width to a grade: a grader, often borrowed for a day. */
  'grade',
  /** Blade that is here every evening and draws loose material up the slope: a tractor's back blade. */
  'draw',
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
