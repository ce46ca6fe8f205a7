/** How an error of this kind is called. */
const name = 'NoRoom'

/**
 * An error where words that were asked for have no room on their page: a manual whose facility says
 * more than anybody thought of, not a fault of the printing.
 * @param message Which page, and what is too much.
 */
export const noRoom = (message: string): Error => Object.assign(new Error(message), { name })

export const isNoRoom = (error: unknown): error is Error =>
  error instanceof Error && error.name === name
