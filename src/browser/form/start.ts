import { groupsAt, valueAt } from '../../edit/form/data.ts'
import type { Screen } from '../../edit/form/subjects.ts'
import { worded } from '../../edit/form/understood.ts'
import { fill } from '../../model/pattern.ts'
import { classed, element } from '../element.ts'
import type { Host, Opened, Work } from './contract.ts'
import { isDayField } from './controls.ts'
import type { Part } from './fields/field.ts'
import { returnTo, showPlace, spotIn } from './focus.ts'
import { type Frame, frameIn } from './frame.ts'
import { openEntry } from './lists/open-entry.ts'
import { livePanel } from './live/live-panel.ts'
import type { Said } from './said.ts'
import { type SavePanel, savePanel } from './save-panel.ts'
import { screenFor } from './screen-for.ts'
import { resultScreen } from './screens/result-screen.ts'
import { startScreen } from './screens/start-screen.ts'
import { subjectScreen } from './screens/subject-screen.ts'
import { type Sitting, sit } from './sitting.ts'

/** Where the address leads: a screen, and a question on it. */
type Target = {
  readonly screen: 'start' | 'result' | Screen
  readonly at?: string
}

function targetOf(sitting: Sitting, hash: string): Target {
  const name = decodeURIComponent(hash.replace(/^#/, ''))
  if (name === 'result') return { screen: 'result' }
  const first = sitting.said.form.first.find(({ id }) => name === `first-${id}`)
  const subject = first?.subject ?? name
  const screen = sitting.screens.find((s) => s.subject.id === subject)
  if (screen) return { screen, ...(first ? { at: `first ${first.id}` } : {}) }
  const at = name.startsWith('at-') ? name.slice(3) : ''
  const found = at === '' ? undefined : screenFor(sitting, at)
  return found ? { screen: found, at } : { screen: 'start' }
}

/** Opens the entries of lists on the way to a place. */
function openTo(sitting: Sitting, at: string): void {
  const steps = at.split('.')
  const number = steps.findIndex((step) => /^\d+$/.test(step))
  if (number === -1) return
  const list = steps.slice(0, number)
  if (Number(steps[number]) < groupsAt(sitting.draft().data, list).length)
    openEntry(list, Number(steps[number]))
}

/** What decides which questions there are: lengths of lists, and what machines are for. */
function shapeOf(sitting: Sitting): string {
  const { data } = sitting.draft()
  const lists = sitting.questions.filter((q) => q.kind === 'list')
  return JSON.stringify([
    lists.map((q) => groupsAt(data, q.path).length),
    groupsAt(data, ['equipment']).map((m) => [m['can'], m['from']]),
    groupsAt(data, ['measurements']).map((m) => m['of']),
    valueAt(data, ['units']),
  ])
}

const idOf = ({ screen }: Target): string =>
  typeof screen === 'string' ? screen : screen.subject.id

function partFor(sitting: Sitting, panel: SavePanel, { screen }: Target): Part {
  if (screen === 'start') return startScreen(sitting)
  if (screen === 'result') return resultScreen(sitting, panel)
  return subjectScreen(sitting, screen)
}

/** Shows the screen of the address, and makes it anew where another kind of thing is asked. */
function showing(sitting: Sitting, frame: Frame, panel: SavePanel) {
  let target: Target = targetOf(sitting, location.hash)
  let part: Part | undefined
  let shape = ''
  const make = (): void => {
    const open = [...frame.main.querySelectorAll('details')].map((fold) => fold.open)
    const isSame = frame.main.dataset['screen'] === idOf(target)
    part = partFor(sitting, panel, target)
    shape = shapeOf(sitting)
    frame.main.dataset['screen'] = idOf(target)
    document.body.dataset['screen'] = idOf(target)
    frame.main.replaceChildren(part.node)
    const folds = [...frame.main.querySelectorAll('details')]
    if (isSame && folds.length === open.length)
      for (const [i, fold] of folds.entries()) fold.open ||= open[i] === true
    frame.refresh(idOf(target))
  }
  return {
    go: (hash: string): void => {
      target = targetOf(sitting, hash)
      if (target.at) openTo(sitting, target.at)
      make()
      const isShown = target.at !== undefined && showPlace(frame.main, target.at)
      if (isShown) return
      globalThis.scrollTo(0, 0)
      frame.main.querySelector('h1')?.focus({ preventScroll: true })
    },
    remake: (): void => {
      const spot = spotIn(frame.main)
      make()
      returnTo(frame.main, spot)
    },
    /** Once a field is left: whether another kind of thing is asked from now on. */
    isStale: (): boolean => shape !== shapeOf(sitting),
    refresh: (): void => {
      part?.refresh()
      frame.refresh(idOf(target))
    },
  }
}

/** A file that is no YAML is not touched; where it stops being so is said. */
function unreadable(root: HTMLElement, work: Work, said: Said, { name, files }: Opened): void {
  const faults = work(files).problems.map(({ place, message, hint }) =>
    element(
      'li',
      `${fill(said.form.says.saving.line, { number: place.line })}: ${worded(message, hint)}`,
    ),
  )
  root.replaceChildren(
    classed(
      'main',
      'screen',
      element('h1', name),
      element('p', said.form.says.frame.unreadable),
      element('ul', ...faults),
    ),
  )
}

/**
 * Begins the form in a page.
 * @param host Where files come from and go to.
 * @param work Works the answers out.
 * @param root What the form fills.
 * @param said All that it says.
 */
export async function startForm(
  host: Host,
  work: Work,
  root: HTMLElement,
  said: Said,
): Promise<void> {
  const opened = await host.open()
  const sitting = sit(host, work, said, opened)
  if (sitting.draft().data === undefined) {
    unreadable(root, work, said, opened)
    return
  }
  const panel = savePanel(sitting)
  const frame = frameIn(root, sitting, panel)
  const shown = showing(sitting, frame, panel)
  const live = livePanel(frame.aside, (entry) => {
    const hash = `#at-${entry}`
    if (location.hash === hash) shown.go(hash)
    else location.hash = hash
  })
  // An address that is shown already changes nothing, and yet somebody wants to go there.
  root.addEventListener('click', (event) => {
    const link = event.target instanceof Element ? event.target.closest('a') : null
    if (event.defaultPrevented || !link || link.target !== '' || link.hash === '') return
    if (link.hash !== location.hash || link.pathname !== location.pathname) return
    event.preventDefault()
    shown.go(link.hash)
  })
  sitting.listen((event) => {
    if (event === 'shape') shown.remake()
    else shown.refresh()
    const worked = event === 'worked' ? sitting.worked() : undefined
    if (worked) live.show(worked)
  })
  const renew = ({ target }: Event): void => {
    setTimeout(() => {
      if (!(isDayField(target) && target === document.activeElement) && shown.isStale())
        shown.remake()
    })
  }
  root.addEventListener('change', renew)
  root.addEventListener('focusout', (event) => {
    if (isDayField(event.target)) renew(event)
  })
  globalThis.addEventListener('hashchange', () => shown.go(location.hash))
  shown.go(location.hash)
}
