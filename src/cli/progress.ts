import type { Io } from './io.ts'

/** Tells how a build goes on: each stage with what came of it and how long it took. */
export type Progress = {
  /** Runs a stage and reports it; the detail is worked out from its result. */
  readonly stage: <T>(
    name: string,
    work: (tell: (detail: string) => void) => Promise<T>,
    detail: (result: T) => string,
  ) => Promise<T>
}

const seconds = (ms: number): string => `${(ms / 1000).toFixed(2)} s`

/**
 * On a terminal the running stage is rewritten in place; elsewhere each finished stage is one plain
 * line.
 */
export function createProgress(io: Io, quiet: boolean): Progress {
  return {
    stage: async (name, work, detail) => {
      const started = performance.now()
      const label = name.padEnd(9)
      const tell = (text: string): void => {
        if (!quiet && io.terminal) process.stderr.write(`\r\u001b[K${label}${text}`)
      }
      tell('…')
      const result = await work(tell)
      if (!quiet) {
        if (io.terminal) process.stderr.write('\r\u001b[K')
        io.err(
          `${label}${detail(result).padEnd(44)} ${seconds(performance.now() - started).padStart(8)}`,
        )
      }
      return result
    },
  }
}
