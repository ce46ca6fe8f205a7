/** Weather of one day; temperatures in kelvin, all else SI. What was not observed is undefined. */
export type WeatherDay = {
  readonly date: string
  readonly high: number
  readonly low: number
  /** m of water. */
  readonly rain: number
  readonly humidity: number | undefined
  /** m/s at the height that the facility states. */
  readonly wind: number | undefined
  /** Seconds of sunshine. */
  readonly sun: number | undefined
}
