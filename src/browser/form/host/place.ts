import type { Host } from '../contract.ts'
import type { Workbooks } from '../workshop/work.ts'

/** Where the files of a facility are: its texts, and the workbooks that lie beside them. */
export type Place = { readonly host: Host; readonly workbooks: () => Workbooks }
