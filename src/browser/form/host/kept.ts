import type { FacilityFiles } from '../contract.ts'

/** What a page that stands alone keeps of the last time. */
export type Kept = {
  readonly name: string
  /** The facility file as it was opened or saved last. */
  readonly saved: string
  /** The same as it was typed. */
  readonly draft: string
  /** Tables beside it, and procedures. */
  readonly files: readonly (readonly [string, string])[]
}

const key = 'ovalkeep-form'

/** What is kept; nothing where the browser keeps nothing for this page. */
export function readKept(): Kept | undefined {
  try {
    const text = localStorage.getItem(key)
    return text === null ? undefined : (JSON.parse(text) as Kept)
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
