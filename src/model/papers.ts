/** Papers for the binder. */
export type Paper = 'letter' | 'a4'

/** Papers for posted sheets, small and large in both systems. */
export const sheetPapers = ['letter', 'tabloid', 'a4', 'a3'] as const

export type SheetPaper = (typeof sheetPapers)[number]
