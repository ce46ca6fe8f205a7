/** What charts are made from: values in SI beside the same values as printed. A chart without its inputs is undefined. */
export type Charts = {
  readonly waterMonths: readonly WaterMonth[] | undefined
}

/** Water that a dry day takes in one month, m³. */
export type WaterMonth = { readonly name: string; readonly short: string; readonly water: number; readonly text: string; readonly loads: string; /** The month of the fair. */ readonly own: boolean }
