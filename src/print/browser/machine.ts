import { homedir, tmpdir } from 'node:os'
import path from 'node:path'

/** Environment variables, as node gives them. */
export type Environment = Readonly<Record<string, string | undefined>>

/**
 * What folders and browsers depend on. It is passed in, so that what is done on every kind of
 * computer can be tested on any.
 */
export type Machine = {
  readonly platform: NodeJS.Platform
  readonly arch: string
  readonly env: Environment
  readonly home: string
  /** The folder for temporary files. */
  readonly temporary: string
  /** Number of the user; nothing on Windows, where users have none. */
  readonly user: number | undefined
}

/** This computer. */
export const thisMachine = (env: Environment): Machine => ({
  platform: process.platform,
  arch: process.arch,
  env,
  home: env[process.platform === 'win32' ? 'USERPROFILE' : 'HOME'] || homedir(),
  temporary: tmpdir(),
  user: process.getuid?.(),
})

/** How paths are written there. */
export const pathsOf = ({ platform }: Pick<Machine, 'platform'>): path.PlatformPath =>
  platform === 'win32' ? path.win32 : path.posix
