/**
 * Widths in which a drawing is laid out, in points as printed: across a page of the binder, across a
 * page of the field book, and in the side column of a posted sheet, each on the narrower of the
 * papers, so that it is never made smaller. One unit of such a drawing is
 * one point, so that its smallest type is what it says.
 */
export const drawingWidths = { page: 465, column: 326, side: 172 } as const

export type DrawingSize = keyof typeof drawingWidths
