import { changedAnswers } from '../../edit/form/changed-answers.ts'
import type { Draft } from '../../edit/form/draft.ts'
import { progressOf } from '../../edit/form/progress.ts'
import { fill } from '../../model/pattern.ts'
import type { Path } from '../../read/read-yaml.ts'
import { button, classed, element } from '../element.ts'
import { calledAt } from './problem-at.ts'
import type { SavePanel } from './save-panel.ts'
import { isNewFile, unsavedLines } from './saving/changes.ts'
import { screenFor } from './screen-for.ts'
import type { Sitting } from './sitting.ts'

/** The place of what a step has changed: an answer, else the readings beside the file. */
const stepAt = (before: Draft, after: Draft): Path =>
  changedAnswers(before.data, after.data)[0] ?? ['surveys']

/** The bar above every screen: whose file it is, what is saved, one step back. */
function barOf(sitting: Sitting, panel: SavePanel) {
  const { frame } = sitting.said.form.says
  const home = element('a', frame.title)
  home.href = '#start'
  home.className = 'whose'
  const state = classed('p', 'state')
  state.setAttribute('role', 'status')
  // What was taken back, or made again, is said until something else changes.
  let told: { readonly draft?: Draft; readonly words: string } = { words: '' }
  const step = (go: () => void, pattern: typeof frame.undone): void => {
    const before = sitting.draft()
    go()
    const draft = sitting.draft()
    const at = stepAt(before, draft)
    const subject = screenFor(sitting, at.join('.'))?.subject.title ?? ''
    told = { draft, words: fill(pattern, { what: calledAt(sitting, at), subject }) }
    refresh()
  }
  const back = button(frame.back, () => {
    step(sitting.back, frame.undone)
    // A button that cannot be pressed any more would lose the keyboard.
    if (back.disabled) forward.focus()
  })
  const forward = button(frame.forward, () => {
    step(sitting.forward, frame.redone)
    if (forward.disabled) back.focus()
  })
  const save = button(frame.save, () => panel.open())
  save.className = 'strong'
  const refresh = (): void => {
    const count = unsavedLines(sitting)
    const saved =
      count === 0
        ? isNewFile(sitting)
          ? frame.noFile
          : frame.saved
        : `${fill(frame.unsaved, { count })}. ${frame.kept}`
    state.textContent = told.draft === sitting.draft() ? `${told.words} ${saved}` : saved
    back.disabled = sitting.draft().steps.length === 0
    forward.disabled = sitting.draft().ahead.length === 0
    save.disabled = count === 0
  }
  return {
    node: classed('header', 'bar', home, state, classed('div', 'buttons', back, forward, save)),
    refresh,
  }
}

/** The subjects, each with how far it is. */
function menuOf(sitting: Sitting) {
  const { frame } = sitting.said.form.says
  const all = sitting.said.form.first.length
  const done = classed('p', 'soft')
  const links = sitting.screens.map((screen) => {
    const how = classed('span', 'soft')
    const link = element('a', element('span', screen.subject.title), how)
    link.href = `#${screen.subject.id}`
    return { screen, how, link }
  })
  const result = element('a', frame.result)
  result.href = '#result'
  result.className = 'onward'
  const nav = element(
    'nav',
    done,
    element('ul', ...links.map(({ link }) => element('li', link))),
    result,
  )
  nav.setAttribute('aria-label', frame.subjects)
  const node = classed('details', 'menu', element('summary', frame.subjects), nav)
  const isWide = matchMedia('(min-width: 62rem)')
  node.open = isWide.matches
  isWide.addEventListener('change', () => {
    node.open = isWide.matches
  })
  const refresh = (here: string): void => {
    const { data } = sitting.draft()
    let answered = 0
    for (const { screen, how, link } of links) {
      const progress = progressOf(data, screen, sitting.notYet.has)
      answered += progress.done
      const parts = { done: progress.done, all: progress.all }
      how.textContent =
        progress.all === 0
          ? progress.begun
            ? ''
            : frame.later
          : progress.done === progress.all
            ? frame.done
            : fill(frame.of, parts)
      if (screen.subject.id === here) link.setAttribute('aria-current', 'page')
      else link.removeAttribute('aria-current')
    }
    done.textContent = fill(frame.answered, { done: answered, all })
  }
  return { node, refresh }
}

/** What stands round every screen. */
export type Frame = {
  readonly main: HTMLElement
  readonly aside: HTMLElement
  readonly refresh: (here: string) => void
}

/** Puts the frame into the page. */
export function frameIn(root: HTMLElement, sitting: Sitting, panel: SavePanel): Frame {
  const { frame } = sitting.said.form.says
  const bar = barOf(sitting, panel)
  const menu = menuOf(sitting)
  const main = element('main')
  main.id = 'text'
  const aside = element('aside')
  const skip = classed('a', 'skip', frame.skip)
  skip.href = '#text'
  skip.addEventListener('click', (event) => {
    event.preventDefault()
    main.querySelector('h1')?.focus()
  })
  root.replaceChildren(skip, bar.node, classed('div', 'desk', menu.node, main, aside), panel.node)
  return {
    main,
    aside,
    refresh: (here) => {
      bar.refresh()
      menu.refresh(here)
    },
  }
}
