import type { Io } from '../../../src/cli/io.ts'
import { main } from '../../../src/cli/main.ts'
import { date, folders } from '../../support/demo.ts'

/** Runs the command line in this process, from the folder of the project. */
export async function run(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  let [out, err] = ['', '']
  const io: Io = {
    out: (t) => (out += `${t}\n`),
    err: (t) => (err += `${t}\n`),
    colors: false,
    terminal: false,
    env: process.env,
    cwd: folders.project,
    today: date,
  }
  return { code: await main(args, io), out, err }
}
