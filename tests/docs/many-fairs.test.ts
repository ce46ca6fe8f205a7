import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import path from 'node:path'
import { build } from 'esbuild'
import { Job } from 'kubernetes-models/batch/v1'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { exit } from '../../src/cli/io.ts'
import { readPart } from '../../src/cli/many/part.ts'
import { run } from '../cli/support/run.ts'
import { folders } from '../support/demo.ts'

const { project } = folders
const file = (name: string): string =>
  readFileSync(path.join(project, 'docs', 'many-fairs', name), 'utf8')

const parser = '@actions/workflow-parser'

/** A folder for what a test makes, from where packages are found. */
const ownFolder = (): string => mkdtempSync(path.join(project, 'node_modules', '.cache', 'docs-'))

/** The package imports JSON as bundlers do, and not as node does. */
async function workflowParser(): Promise<typeof import('@actions/workflow-parser')> {
  const folder = ownFolder()
  const outfile = path.join(folder, 'parser.cjs')
  await build({
    stdin: { contents: `export * from '${parser}'`, resolveDir: project },
    bundle: true,
    outfile,
    format: 'cjs',
    platform: 'node',
    logLevel: 'error',
  })
  const loaded = createRequire(outfile)(outfile)
  rmSync(folder, { recursive: true })
  return loaded
}

let loading: ReturnType<typeof workflowParser> | undefined

/** What the parser that GitHub publishes for its workflows (workflow-v1.0) says of one. */
async function faultsOfWorkflow(content: string): Promise<readonly string[]> {
  loading ??= workflowParser()
  const { convertWorkflowTemplate, NoOperationTraceWriter, parseWorkflow } = await loading
  const trace = new NoOperationTraceWriter()
  const { context, value } = parseWorkflow({ name: 'manuals.yml', content }, trace)
  if (value) await convertWorkflowTemplate(context, value)
  return context.errors.getErrors().map((e) => e.message)
}

/** What the schema of a Job in the OpenAPI description of Kubernetes (batch/v1) says of one. */
function faultsOfJob(content: string): readonly string[] {
  try {
    new Job(parse(content)).validate()
    return []
  } catch (error) {
    return [String(error)]
  }
}

/** Keys that the schema does not know, which it passes over: its types do not. */
function unknownKeys(content: string): readonly string[] {
  const folder = ownFolder()
  const source = path.join(folder, 'job.ts')
  const text = `import type { IJob } from 'kubernetes-models/batch/v1'\nexport const job: IJob = ${JSON.stringify(parse(content), null, 1)}\n`
  writeFileSync(source, text)
  const tsc = path.join(project, 'node_modules', 'typescript', 'bin', 'tsc')
  const options = '--noEmit --strict --skipLibCheck --module esnext --moduleResolution bundler'
  const args = [tsc, ...options.split(' '), '--ignoreConfig', source]
  const { stdout, status } = spawnSync(process.execPath, args, { cwd: folder, encoding: 'utf8' })
  rmSync(folder, { recursive: true })
  return status === 0 ? [] : stdout.split('\n').filter(Boolean)
}

/** Options of the command that a file gives, each known to the command line. */
async function options(command: string): Promise<readonly string[]> {
  const { out } = await run('build', '--help')
  const named = [...command.matchAll(/ (--[a-z-]+)/g)].map(([, name]) => name ?? '')
  expect(named).toContain('--part')
  for (const name of named) expect(out).toContain(name)
  return named
}

describe('the workflow for a matrix of parts', () => {
  it('is sound by the schema of that system', async () => {
    expect(await faultsOfWorkflow(file('github-workflow.yml'))).toEqual([])
  })

  it.each([
    ['a key that there is not', /fail-fast/, 'fail-fats'],
    ['a value that is not in scope there', /strategy\.job-total/, 'job.total.parts('],
    ['a list that is none', /branches: \[main\]/, 'branches: { main: 1 }'],
  ])('would be told of %s', async (_, from, to) => {
    const text = file('github-workflow.yml')
    expect(text).toMatch(from)
    expect(await faultsOfWorkflow(text.replace(from, to))).not.toEqual([])
  })

  it('makes every part once, with options that there are', async () => {
    const { jobs } = parse(file('github-workflow.yml'))
    const { strategy, steps } = jobs.manuals
    const { part } = strategy.matrix
    expect(part).toEqual(part.map((_: number, i: number) => i + 1))
    const command = steps.map((s: { run?: string }) => s.run ?? '').join('')
    await options(command)
    expect(command).toContain('--part ${{ matrix.part }}/${{ strategy.job-total }}')
  })
})

describe('the indexed job', () => {
  it('is sound by the schema of that system', () => {
    expect(faultsOfJob(file('kubernetes-job.yaml'))).toEqual([])
  })

  it('has no key that the system does not know', () => {
    const text = file('kubernetes-job.yaml')
    expect(unknownKeys(text)).toEqual([])
    expect(unknownKeys(text.replace('fsGroup', 'fileGroup')).join('\n')).toContain('fileGroup')
  })

  it.each([
    ['a number that is none', /parallelism: 4/, 'parallelism: four'],
    ['a key that is missing', /- name: manuals\n {10}image/, '- image'],
    ['a value that is not allowed', /operator: In/, 'operator: 7'],
  ])('would be told of %s', async (_, from, to) => {
    const text = file('kubernetes-job.yaml')
    expect(text).toMatch(from)
    expect(faultsOfJob(text.replace(from, to))).not.toEqual([])
  })

  it('makes every part once, and tries nothing again that would end the same', async () => {
    const { spec } = parse(file('kubernetes-job.yaml'))
    const [container] = spec.template.spec.containers
    const [command] = container.args
    await options(command)
    const parts = Array.from({ length: spec.completions }, (_, index) =>
      readPart(
        /--part "(.*?)"/
          .exec(command)?.[1]
          ?.replace('$((JOB_COMPLETION_INDEX + 1))', String(index + 1)) ?? '',
      ),
    )
    expect(parts.map((p) => p?.number)).toEqual(parts.map((_, i) => i + 1))
    expect(new Set(parts.map((p) => p?.of))).toEqual(new Set([spec.completions]))
    const [rule] = spec.podFailurePolicy.rules
    expect(rule.onExitCodes.values).toEqual([exit.faults, exit.usage, exit.unwritable])
    expect(rule.onExitCodes.containerName).toBe(container.name)
  })
})
