/** Papers for the binder. */
export type Paper = 'letter' | 'a4'

/** Papers for posted sheets, small and large in both systems. */
export const sheetPapers = ['letter', 'tabloid', 'a4', 'a3'] as const

export type SheetPaper = (typeof sheetPapers)[number]

/**
 * How dividers of a binder are made: none, leaves of its own paper with a printed tab, or leaves
 * with cut tabs from a shop.
 */
export const dividerKinds = ['none', 'leaves', 'tab-stock'] as const
export type DividerKind = (typeof dividerKinds)[number]
