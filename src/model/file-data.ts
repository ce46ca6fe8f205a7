/** Ids under which the manual in one file carries what its script reads. */
export const fileData = { index: 'manual-index', day: 'day-numbers' } as const
