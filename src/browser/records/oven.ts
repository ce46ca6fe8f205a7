/**
 * Moisture of a sample by dry weight from three readings of one scale, in any unit: what dried off
 * against what is left (ASTM D2216). Undefined where they cannot be so.
 * @param wet The jar with the wet sample.
 * @param dry The jar with the sample after the oven.
 * @param jar The jar alone.
 */
export const ovenMoisture = (wet: number, dry: number, jar: number): number | undefined =>
  jar >= 0 && dry > jar && wet >= dry ? (wet - dry) / (dry - jar) : undefined

/** A weight as the scale reads it; its unit does not count. */
export function weightOf(text: string | undefined): number | undefined {
  const read = /^\s*(\d+(?:\.\d+)?|\.\d+)\s*(?:g|oz|lb|kg)?\s*$/i.exec(text ?? '')
  return read ? Number(read[1]) : undefined
}
