import { calculation } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'

/** How long one module of training takes for the volunteers there are, and how long all of them. */
export const lesson = calculation({
  id: 'lesson',
  sources: ['common-practice'],
  inputs: {
    volunteers: { symbol: 'p', kind: 'count', range: [1, 200] },
    group: { symbol: 'g', kind: 'count', range: [1, 20] },
    talk: { symbol: 't_t', kind: 'minutes', range: [0, 7200] },
    practice: { symbol: 't_p', kind: 'minutes', range: [0, 7200] },
    modules: { symbol: 'm', kind: 'count', range: [1, 40] },
  },
  outputs: {
    groups: {
      symbol: 'n',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@volunteers}{@group} \\right\\rceil',
    },
    module: { symbol: 't_m', kind: 'minutes', tex: '@talk + @groups\\,@practice' },
    all: { symbol: 'T', kind: 'duration', tex: '@modules\\,@module' },
  },
  compute: (x) => {
    const groups = wholeUp(x.volunteers / x.group)
    const module = x.talk + groups * x.practice
    return { groups, module, all: x.modules * module }
  },
})
