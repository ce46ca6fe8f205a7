import type { Reporter, TestModule, Vitest } from 'vitest/node'

type Project = { readonly from: number; to: number; failed: boolean }

const seconds = (ms: number): string => `${(ms / 1000).toFixed(1)} s`

/** `12 passed, 1 failed`, with what was skipped if anything was. */
function counts(modules: readonly TestModule[]): string {
  const tests = modules.flatMap((m) => [...m.children.allTests()])
  const count = (state: string): number => tests.filter((t) => t.result().state === state).length
  // A file that cannot even be loaded has no tests, but it is a failure.
  const broken = modules.filter(
    (m) =>
      m.state() === 'failed' &&
      [...m.children.allTests()].every((t) => t.result().state !== 'failed'),
  ).length
  const skipped = count('skipped')
  return `${count('passed')} passed, ${count('failed') + broken} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`
}

/**
 * Stops after the first project with a failure (projects run one after the other), says how long
 * each took, and ends a run with one plain line of counts after the runner's own summary.
 */
export function countReporter(): Reporter {
  const projects = new Map<string, Project>()
  let runner: Vitest | undefined
  return {
    onInit: (vitest) => {
      runner = vitest
    },
    onTestModuleQueued: ({ project: { name } }) => {
      if (projects.has(name)) return
      const failed = [...projects.values()].some((p) => p.failed)
      projects.set(name, { from: performance.now(), to: performance.now(), failed: false })
      if (failed) void runner?.cancelCurrentRun('test-failure')
    },
    onTestModuleEnd: (module) => {
      const project = projects.get(module.project.name)
      if (project === undefined) return
      project.to = performance.now()
      project.failed ||= module.state() === 'failed'
    },
    onTestRunEnd: (modules) => {
      const times = [...projects].map(([name, { from, to }]) => `${name} ${seconds(to - from)}`)
      process.stdout.write(`\n${times.join(', ')}\n${counts(modules)}\n`)
    },
  }
}
