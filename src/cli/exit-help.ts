import type { ExitCode } from './io.ts'

const meanings: Readonly<Record<ExitCode, string>> = {
  0: 'done',
  1: 'the content or the facility file has errors; nothing was written',
  2: 'the command line cannot be understood',
  3: 'no browser can run, it failed twice, or words have no room on their page: site and figures were written, PDFs were not',
  4: 'there is no number for what was asked; why is said',
  5: 'nothing can be written there (permission, disk, name); why is said',
  70: 'a fault of the program itself',
}

/** What a command says of the codes with which it can end, and of no others. */
export const exitHelp = (...codes: readonly ExitCode[]): string =>
  ['', 'Exit codes:', ...codes.map((code) => `  ${String(code).padEnd(4)}${meanings[code]}`)].join(
    '\n',
  )

/** What one code says of many manuals. */
export const severalHelp = 'Of several facilities the worst counts, in the order 0, 3, 1, 5, 70.'
