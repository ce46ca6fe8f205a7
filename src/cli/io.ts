import { dayAt } from '../model/day.ts'

/** What a command may touch of the outside world, so that tests need no process. */
export type Io = {
  readonly out: (text: string) => void
  readonly err: (text: string) => void
  readonly colors: boolean
  /** Whether messages go to a terminal, where progress may be shown. */
  readonly terminal: boolean
  readonly env: Readonly<Record<string, string | undefined>>
  readonly cwd: string
  /** Today, `YYYY-MM-DD`. */
  readonly today: string
}

/** Exit codes; documented in the help and in DEVELOPERS.md. */
export const exit = {
  fine: 0,
  /** The content or the facility file has errors; nothing was written. */
  faults: 1,
  /** The command line cannot be understood. */
  usage: 2,
  /** No browser can run, or words have no room on their page: site and figures were written, PDFs were not. */
  noPdfs: 3,
  /** There is no number for what was asked, and why was said. */
  noNumber: 4,
  /** What was to be written cannot be: no permission, a full disk, a name too long; why was said. */
  unwritable: 5,
  /** A fault of the program itself. */
  bug: 70,
} as const

export type ExitCode = (typeof exit)[keyof typeof exit]

/** The io of a real process. */
export function processIo(): Io {
  const epoch = process.env['SOURCE_DATE_EPOCH']
  const now = epoch !== undefined && /^\d+$/.test(epoch) ? Number(epoch) * 1000 : Date.now()
  const terminal = process.stderr.isTTY === true && process.env['TERM'] !== 'dumb'
  return {
    out: (text) => process.stdout.write(`${text}\n`),
    err: (text) => process.stderr.write(`${text}\n`),
    colors: terminal && process.env['NO_COLOR'] === undefined,
    terminal,
    env: process.env,
    cwd: process.cwd(),
    today: dayAt(now),
  }
}
