/** The posted sheet that says whom to call. */
export const emergencySheet = 'emergency'

/** All posted sheets in one file. */
export const allSheets = 'sheets'

/** Names of files beside the sheets of procedures; no procedure may have them. */
export const takenSheetNames: readonly string[] = [emergencySheet, allSheets]
