import { describe, expect, it } from 'vitest'
import { composeJobs, type Job } from '../../../src/compose/facility/jobs.ts'
import { loadDemo } from '../../support/demo.ts'

async function jobsOf(demo: string): Promise<readonly Job[]> {
  const { library, facility, computed } = await loadDemo(demo)
  if (!library || !facility || !computed) throw new Error(`${demo} has faults`)
  return composeJobs(library, facility, computed)
}

const of = (jobs: readonly Job[], capability: string): Job | undefined =>
  jobs.find((job) => job.capability === capability)

describe('work and machines', () => {
  it('name the machines that do it, and what needs them', async () => {
    const jobs = await jobsOf('larkmoor')
    expect(of(jobs, 'spray')?.machines).toEqual(['the water truck'])
    expect(of(jobs, 'spray')?.procedures).toContain('Calibrate the water truck')
    // One machine does two kinds of work.
    expect(of(jobs, 'roll-tires')?.machines).toEqual(of(jobs, 'haul')?.machines)
  })

  it('tell what is left out or done otherwise where no machine can', async () => {
    const grade = of(await jobsOf('brambleford'), 'grade')
    expect(grade?.machines).toEqual([])
    expect(grade?.procedures).toContain('A day with the grader')
  })

  it('have a procedure only under work that changes it', async () => {
    const { library } = await loadDemo('larkmoor')
    const free = (library?.procedures ?? [])
      .map((p) => p.value)
      .filter((p) => !/"(?:has|any|lacks)":/.test(JSON.stringify(p)))
      .map((p) => p.title)
    expect(free.length).toBeGreaterThan(3)
    const named = (await jobsOf('larkmoor')).flatMap((job) => job.procedures)
    expect(named.filter((title) => free.includes(title))).toEqual([])
  })
})
