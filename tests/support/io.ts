import type { Io } from '../../src/cli/io.ts'
import { date } from './demo.ts'

/** A terminal in a folder that tells all that is said; without a browser, which keeps builds fast. */
export const ioIn = (cwd: string, say: (line: string) => void): Io => ({
  out: say,
  err: say,
  colors: false,
  terminal: false,
  env: { ...process.env, OVALKEEP_BROWSER: `${cwd}/no-browser` },
  cwd,
  today: date,
})
