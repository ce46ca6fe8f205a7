import type { Manual } from '../model/manual.ts'
import type { OutputFile } from '../model/output-file.ts'
import { type LastBuild, lastBuild, type MadeAt, printedFiles } from '../write/last-build.ts'

/** Printed files of an earlier build. */
export type Kept = {
  readonly last: LastBuild | undefined
  readonly files: readonly OutputFile[]
  /** The revision that they are of, where it is another one than that of this build. */
  readonly older: MadeAt | undefined
}

/** What stays of an earlier build: everything printed, where nothing was printed now. */
export async function keptPrints(
  target: string,
  { facility, date }: Manual,
  isPrinted: boolean,
): Promise<Kept> {
  const last = await lastBuild(target)
  if (!last || isPrinted) return { last, files: [], older: undefined }
  const { printed: of } = last
  const isSame = of?.revision === facility.revision && of.date === date
  const files = await printedFiles(target, last)
  return { last, files, older: isSame || files.length === 0 ? undefined : of }
}
