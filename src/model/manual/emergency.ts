export type Contact = {
  readonly role: string
  readonly roleTitle: string
  readonly name: string
  readonly phone: string
  readonly note: string
}

/** A place of help outside the grounds; what is not known is empty. */
export type PlaceOfHelp = { readonly name: string; readonly phone: string; readonly way: string }

/**
 * The emergency page. What the facility file does not say is empty, or an empty list: the page has
 * a line for it to be filled in by hand.
 */
export type Emergency = {
  readonly number: string
  readonly radio: string
  readonly address: string
  readonly gate: string
  readonly way: string
  /** As read to a dispatcher: "40.82975° N, 89.08131° W". */
  readonly coordinates: string
  /** The same in degrees, north and east positive, for a map. */
  readonly point: { readonly latitude: number; readonly longitude: number } | undefined
  readonly meetingPoint: string
  /** Who may stop racing. */
  readonly stops: readonly Contact[]
  /**
   * Whoever else is called, in the order of the page; a role that nobody fills has neither name nor
   * phone.
   */
  readonly contacts: readonly Contact[]
  readonly hospital: PlaceOfHelp
  readonly equineClinic: PlaceOfHelp
  readonly firstAid: readonly string[]
  readonly defibrillator: readonly string[]
  readonly extinguishers: readonly string[]
}
