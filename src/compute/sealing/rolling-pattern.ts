import { wholeUp } from '../whole-up.ts'

/** The tires of one truck, m. */
export type TruckTires = {
  /** Width of one tire's print. */
  readonly tread: number
  /** Tires side by side on each side, 1 or 2. */
  readonly perSide: number
  /** Bare ground between the prints of twin tires. */
  readonly gap: number
  /** From the middle of the left tires to the middle of the right ones. */
  readonly track: number
  /** By how much a print lies over the one rolled before. */
  readonly overlap: number
}

/** How a truck moves out from lap to lap so that no strip is left loose; m and laps. */
export type RollingPattern = {
  /** Moves of `step` that close the gap between twin tires. */
  readonly closing: number
  readonly step: number
  /** Width of the strip that is rolled when the gap is closed. */
  readonly strip: number
  /** Strips beside each other until the left ones meet the right ones: a block. */
  readonly strips: number
  /** Move to the next strip. */
  readonly next: number
  /** Laps of a block. */
  readonly laps: number
  /** Width of a block. */
  readonly width: number
  /** Move to new ground after them. */
  readonly jump: number
}

/**
 * Twin tires print two bands with a gap; one or two laps with small moves close it and make a strip.
 * Strips go side by side until they reach what the right tires have rolled: a block. Then the truck
 * moves to new ground. Plane geometry; a pattern with fewer laps exists for some widths, but nobody
 * could drive it.
 */
export function rollingPattern({
  tread,
  perSide,
  gap,
  track,
  overlap,
}: TruckTires): RollingPattern {
  const step = tread - overlap
  const closing = perSide > 1 ? wholeUp(gap / step) : 0
  const strip = perSide * tread + (perSide - 1) * gap + closing * step
  const strips = 1 + Math.max(0, wholeUp((track + overlap - strip) / (strip - overlap)))
  const width = track + strip + (strips - 1) * (strip - overlap)
  const last = (strips - 1) * (strip - overlap) + closing * step
  return {
    closing,
    step,
    strip,
    strips,
    next: strip - overlap - closing * step,
    laps: (closing + 1) * strips,
    width,
    jump: width - overlap - last,
  }
}

/** Where the inside edge of the inside tires runs on each lap of the first block, m from the rail. */
export function firstPlaces(p: RollingPattern): readonly number[] {
  const places: number[] = []
  for (let at = 0, lap = 0; lap < p.laps; lap++) {
    places.push(at)
    at += lap % (p.closing + 1) < p.closing ? p.step : p.next
  }
  return places
}

/**
 * Where the blocks begin across a width, m from the rail: each beside the one before, the last with
 * its outside tires at the outside edge.
 */
export const blockStarts = (
  width: number,
  overlap: number,
  across: number,
  blocks: number,
): readonly number[] =>
  Array.from({ length: blocks }, (_, i) =>
    Math.max(0, Math.min(i * (width - overlap), across - width)),
  )
