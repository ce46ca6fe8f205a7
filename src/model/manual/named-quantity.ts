/** A quantity that text can name: a figure, or a fact of the facility. */
export type NamedQuantity = {
  readonly name: string
  readonly label: string
  /**
   * As set large: "1 h 25" and "min". When there is no value, `text` says "not known" and `reason`
   * why.
   */
  readonly number: string
  readonly unit: string
  readonly text: string
  /** In SI, for drawings to scale; undefined where there is no value. */
  readonly si: number | undefined
  readonly ok: boolean
  readonly reason: string
  readonly estimate: boolean
  /** Labels of what to measure to make an estimate sharp. */
  readonly toMeasure: readonly string[]
  /** Number and id of the worksheet, for figures; undefined for facts. */
  readonly worksheet: { readonly number: string; readonly id: string } | undefined
}
