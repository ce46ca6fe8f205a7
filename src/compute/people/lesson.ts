import { calculation } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'

/** How long one module of training takes for the volunteers there are, and how long all of them. */
export const lesson = calculation({
  id: 'lesson',
  title: 'How long the training takes',
  about:
    'A talk for all, then practice group by group with one trainer. With two trainers half of the groups practice at a time. Two evenings take the same work with a break for the night.',
  sources: ['common-practice'],
  inputs: {
    volunteers: { symbol: 'p', label: 'people on a race day', kind: 'count', range: [1, 200] },
    group: { symbol: 'g', label: 'people in a group', kind: 'count', range: [1, 20] },
    talk: { symbol: 't_t', label: 'talk for all', kind: 'minutes', range: [0, 7200] },
    practice: { symbol: 't_p', label: 'practice of one group', kind: 'minutes', range: [0, 7200] },
    modules: { symbol: 'm', label: 'modules', kind: 'count', range: [1, 40] },
  },
  outputs: {
    groups: {
      symbol: 'n',
      label: 'groups',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@volunteers}{@group} \\right\\rceil',
    },
    module: {
      symbol: 't_m',
      label: 'for one module',
      kind: 'minutes',
      tex: '@talk + @groups\\,@practice',
    },
    all: { symbol: 'T', label: 'for all modules', kind: 'duration', tex: '@modules\\,@module' },
  },
  compute: (x) => {
    const groups = wholeUp(x.volunteers / x.group)
    const module = x.talk + groups * x.practice
    return { groups, module, all: x.modules * module }
  },
})
