/** Two in the afternoon of the first race day of the demo fair. */
export const clock = `{
  const Real = Date
  const now = '2027-08-03T14:05:00'
  globalThis.Date = class extends Real {
    constructor(...given) { super(...(given.length ? given : [now])) }
    static now() { return new Real(now).getTime() }
  }
}`
