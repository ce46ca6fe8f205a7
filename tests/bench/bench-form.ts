import { ovalLengths, tellingNumbers } from '../../src/browser/form/live/numbers.ts'
import { planKey, planSvg } from '../../src/browser/form/live/plan-figure.ts'
import type { Shown } from '../../src/browser/form/live/worked.ts'
import { demoFiles, workHere } from '../answers/support/work.ts'
import { aimed, median } from './whole-process.ts'

// What somebody waits for in the form before the panel shows what an answer makes: all that is worked
// out of the file, then the parts that stand open, plan and numbers. What a browser takes to put them
// into its page is not in it.

const rounds = 30
const work = await workHere()
const fair = demoFiles('larkmoor')
const text = fair.get('facility.yaml') ?? ''
const answers = new Map<string, (round: number) => string>([
  [
    'form: a speed',
    (round) => text.replace(/speed: 5 mph/, `speed: ${(4 + round / 100).toFixed(2)} mph`),
  ],
  [
    'form: a measure of the oval',
    (round) => text.replace(/turns: 70 ft/, `turns: ${(70 + round / 10).toFixed(1)} ft`),
  ],
])

for (const [name, answered] of answers) {
  const taken: { readonly worked: number; readonly shown: number }[] = []
  let key: string | undefined
  for (let round = 0; round < rounds; round++) {
    const files = new Map([...fair, ['facility.yaml', answered(round)]])
    const started = performance.now()
    const { facility, computed, manual, ...rest } = work(files)
    if (!facility || !computed || !manual) throw new Error('there is always something to show')
    const worked = performance.now()
    const shown: Shown = { facility, computed, manual, ...rest }
    const [lengths, is] = [ovalLengths(shown), planKey(shown)]
    if (is !== key) planSvg(shown, lengths)
    key = is
    tellingNumbers(shown)
    taken.push({ worked: worked - started, shown: performance.now() - started })
  }
  const warm = taken.slice(10)
  const all = median(warm.map((t) => t.shown))
  const ofIt = median(warm.map((t) => t.worked)).toFixed(0)
  console.log(aimed(name, `${all.toFixed(0)} ms, of it worked out ${ofIt}`, { is: all, aim: 150 }))
}
