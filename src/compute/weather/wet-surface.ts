/**
 * A bare surface that is kept wet draws a fifth more than the reference grass: FAO-56 Eq. 72 with
 * no plants, in usual wind and moisture.
 */
export const wetSurface = 1.2
