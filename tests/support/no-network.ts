import { execFile } from 'node:child_process'
import { promisify } from 'node:util'

/**
 * A network of its own: no way out of it, and the computer itself reached by its own address alone. Who
 * does not own the computer is its owner inside for as long as that takes, where the system allows it.
 */
const [user, group] = [process.getuid?.() ?? 0, process.getgid?.() ?? 0]
const asOwner = user === 0 ? [] : ['--user', '--map-root-user']
const asBefore =
  user === 0 ? [] : ['unshare', '--user', `--map-user=${user}`, `--map-group=${group}`]
const alone = [
  ...['unshare', ...asOwner, '--net'],
  ...['sh', '-c', 'ip link set lo up && exec "$@"', 'sh', ...asBefore],
]

const run = promisify(execFile)

/** Why the system gives no network of its own; undefined where it does. */
export const whyNone = await run(alone[0] ?? '', [...alone.slice(1), 'true']).then(
  () => undefined,
  (error: unknown) => String(error).trim(),
)

/**
 * Runs a command without a network, or with one where the system gives none of its own.
 * @returns what it has written on its output.
 */
export async function withoutNetwork(
  command: readonly string[],
  env: NodeJS.ProcessEnv,
): Promise<string> {
  const [file = '', ...args] = whyNone === undefined ? [...alone, ...command] : command
  const { stdout } = await run(file, args, { env, maxBuffer: 2 ** 26 })
  return stdout
}
