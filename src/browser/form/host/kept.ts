import type { FacilityFiles } from '../contract.ts'

/** What a page that stands alone keeps of the last time. */
export type Kept = {
  readonly name: string
  /** The facility file as it was opened or saved last. */
  readonly saved: string
  /** What was typed and not saved: the facility file, tables beside it. */
  readonly draft: readonly (readonly [string, string])[]
  /** Tables beside it as they were opened or saved last, and procedures. */
  readonly files: readonly (readonly [string, string])[]
  /** Workbooks beside it, in Base64. */
  readonly workbooks: readonly (readonly [string, string])[]
}

const key = 'ovalkeep-form'

/** What is kept; nothing where the browser keeps nothing for this page. */
export function readKept(): Kept | undefined {
  try {
    const text = localStorage.getItem(key)
    const kept = text === null ? undefined : (JSON.parse(text) as Kept)
    return kept && Array.isArray(kept.workbooks) ? kept : undefined
  } catch {
    return undefined
  }
}

/** Keeps it; false where the browser does not let the page, or has no room. */
export function keep(kept: Kept): boolean {
  try {
    localStorage.setItem(key, JSON.stringify(kept))
    return true
  } catch {
    return false
  }
}

/** Everything but the facility file. */
export const besides = (files: FacilityFiles, facilityFile: string): Kept['files'] =>
  [...files].filter(([path]) => path !== facilityFile)
