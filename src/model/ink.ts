/** Black spares ink, and a copier's guesses at colors. */
export const inks = ['color', 'black'] as const

export type Ink = (typeof inks)[number]
