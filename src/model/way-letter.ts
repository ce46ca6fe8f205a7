/**
 * The letter by which one of several ways of working is called, in the table that leads to it and
 * over its steps; undefined where there is no choice.
 * @param i Its place among them, from 0.
 */
export const wayLetter = (i: number, count: number): string | undefined =>
  i < 0 || count < 2 ? undefined : String.fromCharCode(65 + i)
