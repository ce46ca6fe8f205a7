import { parseArgs } from 'node:util'
import { isMainThread, parentPort, Worker } from 'node:worker_threads'
import { prepareGround } from './ground.ts'
import { type NamedRun, type SubjectName, shakeOnce, subjectNames, subjectOf } from './shake.ts'

// Changes files by chance and looks at what comes of it:
// npm run shake -- --runs 10000 --seed 1; npm run shake -- --only facility-1234 repeats one run.

/** More work of this process than this, ms, and a run hangs, however busy the computer is. */
const longest = 10_000

const worked = (): number => {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1000
}

type Task = { readonly seed: number; readonly subject: SubjectName }

/** In a thread of its own: makes the runs that it is told, one after the other. */
async function work(): Promise<void> {
  const ground = await prepareGround()
  parentPort?.on('message', async (task: Task | 'end') => {
    if (task === 'end') {
      await ground.remove()
      process.exit(0)
    }
    parentPort?.postMessage(await shakeOnce(ground, task.seed, task.subject))
  })
  parentPort?.postMessage('ready')
}

function tasksOf(args: readonly string[]): readonly Task[] {
  const { values } = parseArgs({
    args: [...args],
    options: {
      runs: { type: 'string', default: '1000' },
      seed: { type: 'string', default: '1' },
      kind: { type: 'string' },
      only: { type: 'string' },
    },
  })
  const named = (name: string | undefined): SubjectName | undefined => {
    const known = subjectNames.find((subject) => subject === name)
    if (name !== undefined && known === undefined)
      throw new RangeError(`there is no kind "${name}"; known: ${subjectNames.join(', ')}`)
    return known
  }
  const [, only, seed] = /^(.*)-(\d+)$/.exec(values.only ?? '') ?? []
  const subject = named(only)
  if (subject) return [{ seed: Number(seed), subject }]
  const kind = named(values.kind)
  return Array.from({ length: Number(values.runs) }, (_, i) => {
    const own = Number(values.seed) + i
    return { seed: own, subject: kind ?? subjectOf(own) }
  })
}

/** Makes runs in a thread, which is ended and begun anew where one of them hangs. */
async function runAll(tasks: readonly Task[], tell: (run: NamedRun) => void): Promise<void> {
  let next = 0
  while (next < tasks.length)
    await new Promise<void>((done, fail) => {
      const worker = new Worker(new URL(import.meta.url), { execArgv: ['--enable-source-maps'] })
      let watch: NodeJS.Timeout | undefined
      const hand = (): void => {
        const task = tasks[next]
        if (!task) {
          worker.postMessage('end')
          return
        }
        const before = worked()
        watch = setInterval(() => {
          if (worked() - before < longest) return
          clearInterval(watch)
          const name = `${task.subject}-${task.seed}`
          const faults = [`hangs: longer than ${longest / 1000} s`]
          tell({ ...task, name, file: '?', by: [], ending: 'refused', faults, took: longest })
          next++
          void worker.terminate()
        }, 1000)
        worker.postMessage(task)
      }
      worker.on('message', (message: NamedRun | 'ready') => {
        clearInterval(watch)
        if (message !== 'ready') {
          tell(message)
          next++
        }
        hand()
      })
      worker.on('error', fail)
      worker.on('exit', () => done())
    })
}

type Count = { runs: number; refused: number; made: number; unharmed: number; faults: number }

async function command(): Promise<void> {
  const counts = new Map<SubjectName, Count & { slowest: number }>()
  let faulty = 0
  await runAll(tasksOf(process.argv.slice(3)), (run) => {
    const none = { runs: 0, refused: 0, made: 0, unharmed: 0, faults: 0, slowest: 0 }
    const count = counts.get(run.subject) ?? none
    counts.set(run.subject, count)
    count.runs++
    count[run.ending]++
    count.slowest = Math.max(count.slowest, Math.round(run.took))
    if (run.faults.length === 0) return
    count.faults++
    faulty++
    console.log(`\n${run.name}: ${run.file}, changed by ${run.by.join(', ')}`)
    for (const fault of run.faults.slice(0, 3)) console.log(`  ${fault.slice(0, 1500)}`)
  })
  const sorted = subjectNames.flatMap((name) => {
    const count = counts.get(name)
    return count ? [[name, count] as const] : []
  })
  console.table(Object.fromEntries(sorted))
  console.log(
    faulty === 0 ? 'No faults.' : `${faulty} runs with faults; repeat one with --only <name>.`,
  )
  process.exitCode = faulty === 0 ? 0 : 1
}

if (isMainThread) await command()
else await work()
