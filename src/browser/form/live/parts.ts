import { composeJobs, type Job } from '../../../compose/facility/jobs.ts'
import { fill } from '../../../model/pattern.ts'
import { classed, element } from '../../element.ts'
import { emergencySheet } from './emergency-sheet.ts'
import { type Lack, lacksOf } from './lacks.ts'
import { type Put, putAside } from './left-out.ts'
import type { Missing } from './missing.ts'
import { ovalLengths, type Telling, tellingNumbers } from './numbers.ts'
import { planKey, planSvg } from './plan-figure.ts'
import type { Shown } from './worked.ts'

/** Goes to the question of an entry, by its path with dots. */
export type GoTo = (entry: string) => void

/** Names of the parts of the panel, in their order. */
export const partNames = [
  'plan',
  'figures',
  'emergency',
  'findings',
  'machines',
  'missing',
] as const
export type PartName = (typeof partNames)[number]

/** What a part shows: while its key is the same, it stays as it is. */
export type Part = { readonly key: string; readonly make: () => readonly Node[] }

/** A way to the question of an entry. */
function goLink(entry: string, label: string, goTo: GoTo): HTMLElement {
  const link = element('a', label)
  // As a whole address: one of a place alone would be taken for a way past the head of the page.
  link.href = new URL(`#at-${entry}`, location.href).href
  link.addEventListener('click', (event) => {
    event.preventDefault()
    goTo(entry)
  })
  return link
}

function numberItem(telling: Telling, { library }: Shown, goTo: GoTo): HTMLElement {
  const { label, number, unit, estimate, early } = telling
  const value = classed('dd', estimate ? 'live-estimate' : '', element('b', number))
  if (unit !== '') value.append(' ', classed('span', 'live-unit', unit))
  if (estimate) value.append(' ', classed('span', 'live-mark', library.words.figure.estimate))
  const item = element('div', element('dt', label), value)
  if (early) {
    const { entry, label: what, value: now, part, time } = early
    const pattern = fill(library.words.live.early[part], { time, what: '{what}' })
    item.append(
      classed('dd', 'live-why', aside(pattern, [[goLink(entry, what, goTo), ` ${now}`]], '')),
    )
  }
  return item
}

const numberList = (numbers: readonly Telling[], shown: Shown, goTo: GoTo): HTMLElement =>
  classed('dl', 'live-figures', ...numbers.map((n) => numberItem(n, shown, goTo)))

function planPart(shown: Shown, goTo: GoTo): Part {
  const lengths = ovalLengths(shown)
  return {
    key: `${planKey(shown)}${JSON.stringify(lengths)}`,
    make: () => {
      const drawn = element('template')
      drawn.innerHTML = planSvg(shown, lengths)
      return [classed('div', 'drawing', drawn.content), numberList(lengths, shown, goTo)]
    },
  }
}

function figuresPart(shown: Shown, goTo: GoTo): Part {
  const numbers = tellingNumbers(shown)
  return {
    key: JSON.stringify(numbers),
    make: () => [numberList(numbers, shown, goTo)],
  }
}

function blankItem(
  { entry, label, severity }: Lack,
  { severities }: Shown['library']['words'],
  goTo: GoTo,
): HTMLElement {
  const item = element('li', goLink(entry, label, goTo))
  if (severity === 'serious') {
    item.className = 'live-serious'
    item.append(' ', classed('span', 'live-severity', severities.serious))
  }
  return item
}

function emergencyPart(shown: Shown, blanks: readonly Lack[], goTo: GoTo): Part {
  const { words } = shown.library
  return {
    key: JSON.stringify([shown.manual.emergency, shown.manual.facility.name, blanks]),
    make: () => [
      classed('div', 'live-page', emergencySheet(shown)),
      ...(blanks.length === 0
        ? []
        : [
            element('h4', fill(words.live.blanks, { count: blanks.length })),
            classed('ul', 'live-blanks', ...blanks.map((lack) => blankItem(lack, words, goTo))),
          ]),
    ],
  }
}

/** A line in smaller type about several things, with a way to each. */
function aside(
  pattern: string,
  things: readonly (readonly (Node | string)[])[],
  between: string,
): HTMLElement {
  const [before = '', after = ''] = pattern.split('{what}')
  const listed = things.flatMap((thing, i) => [...(i === 0 ? [] : [between]), ...thing])
  return classed('p', 'live-note', before, ...listed, after)
}

function findingItem(lack: Lack, { library: { words } }: Shown, goTo: GoTo): HTMLElement {
  const { severity, title, text, what, entry, label, guesses } = lack
  const go = goLink(entry, fill(words.live.goTo, { what: label }), goTo)
  return classed(
    'li',
    `live-${severity}`,
    element('h4', classed('span', 'live-severity', words.severities[severity]), ' ', title),
    element('p', text, ' ', element('strong', what)),
    ...(guesses.length === 0
      ? []
      : [
          aside(
            words.findings.guesses,
            guesses.map((g) => [goLink(g.entry, g.label, goTo), ` ${g.text}`]),
            '; ',
          ),
        ]),
    go,
  )
}

function findingsPart(shown: Shown, findings: readonly Lack[], goTo: GoTo): Part {
  const { words } = shown.library
  return {
    key: JSON.stringify(findings),
    make: () =>
      findings.length === 0
        ? [element('p', words.live.noFindings)]
        : [classed('ol', 'live-findings', ...findings.map((f) => findingItem(f, shown, goTo)))],
  }
}

function jobItem({ capability, machines, procedures }: Job, { library: { words } }: Shown) {
  const does = words.capabilities[capability]
  const isDone = machines.length > 0
  const listed = { procedures: procedures.join(', ') }
  const head = isDone
    ? fill(words.live.can, { machines: machines.join(', '), does })
    : fill(words.live.cannot, { does })
  return classed(
    'li',
    isDone ? '' : 'live-without',
    element('h4', `${head.charAt(0).toUpperCase()}${head.slice(1)}`),
    ...(procedures.length === 0
      ? []
      : [element('p', fill(isDone ? words.live.opens : words.live.without, listed))]),
  )
}

function machinesPart(shown: Shown): Part {
  const { library, facility, computed } = shown
  const jobs = composeJobs(library, facility, computed)
  return {
    key: JSON.stringify(jobs),
    make: () => [classed('ul', 'live-jobs', ...jobs.map((job) => jobItem(job, shown)))],
  }
}

/** So many are shown: nobody measures more in a day. */
const shownMissing = 8

function missingItem(missing: Missing, { library: { words } }: Shown, goTo: GoTo): HTMLElement {
  const { entry, label, value, figures, most } = missing
  return element(
    'li',
    element('h4', goLink(entry, label, goTo), `, ${fill(words.live.now, { value })}`),
    element(
      'p',
      fill(words.live.moves, { count: figures }),
      ' ',
      fill(words.live.most, { what: most }),
    ),
  )
}

/** What is missing, once it has been worked out. */
export function missingPart(list: readonly Missing[] | undefined, shown: Shown, goTo: GoTo): Part {
  const { words } = shown.library
  const first = list?.slice(0, shownMissing)
  return {
    key: JSON.stringify(first ?? 'counting'),
    make: () => {
      if (first === undefined) return [element('p', words.live.counting)]
      if (first.length === 0) return [element('p', words.live.noMissing)]
      const items = first.map((m) => missingItem(m, shown, goTo))
      return [
        classed('p', 'live-about', words.live.missingAbout),
        classed('ol', 'live-missing', ...items),
      ]
    },
  }
}

/** What is said above all: whether something was left out, or stands in. */
export function notePart(shown: Shown, goTo: GoTo): Part {
  const { words } = shown.library
  const { out, unsaid } = putAside(shown)
  const way = ({ entry, label }: Put): Node => goLink(entry, label, goTo)
  return {
    key: JSON.stringify([out, unsaid]),
    make: () => [
      ...(out.length > 0 ? [classed('p', 'live-note', words.live.fits)] : []),
      ...out.map((put) =>
        aside(words.live.leftOut, [[way(put), put.why === '' ? '' : ` (${put.why})`]], ''),
      ),
      ...(unsaid.length > 0
        ? [
            aside(
              words.live.standIns,
              unsaid.map((put) => [way(put)]),
              ', ',
            ),
          ]
        : []),
    ],
  }
}

/** Each part but what is missing, which takes longer; made when it is asked for. */
export const quickParts = {
  plan: planPart,
  figures: figuresPart,
  emergency: (shown, goTo) => emergencyPart(shown, lacksOf(shown).blanks, goTo),
  findings: (shown, goTo) => findingsPart(shown, lacksOf(shown).findings, goTo),
  machines: machinesPart,
} as const satisfies Readonly<
  Record<Exclude<PartName, 'missing'>, (shown: Shown, goTo: GoTo) => Part>
>
