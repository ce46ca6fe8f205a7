import { emergencyView } from '../../../render/views/emergency-view.ts'
import { classed, element } from '../../element.ts'
import type { Shown } from './worked.ts'

type View = ReturnType<typeof emergencyView>

/** What is said, or a line to write on. */
function filledIn(text: string, blank: string): Node {
  if (text !== '') return document.createTextNode(text)
  const line = classed('span', 'e-fill')
  line.setAttribute('role', 'img')
  line.setAttribute('aria-label', blank)
  return line
}

/** Lines with their labels. */
const linesOf = (
  lines: readonly { readonly label: string; readonly inside: readonly (Node | string)[] }[],
): HTMLElement =>
  classed(
    'dl',
    'e-lines',
    ...lines.map(({ label, inside }) =>
      element('div', element('dt', label), element('dd', ...inside)),
    ),
  )

const step = (head: readonly (Node | string)[], ...body: readonly Node[]): HTMLElement =>
  classed('div', 'e-step', classed('p', 'e-head', ...head), classed('div', 'e-body', ...body))

/** Everybody to call, and where people and horses are taken. */
function called(view: View, blank: string): HTMLElement {
  const all = [
    ...view.contacts.map((c) => ({ label: c.role, name: c.name, phone: c.phone, more: c.note })),
    ...view.helps.map((h) => ({ label: h.label, name: h.name, phone: h.phone, more: h.way })),
  ]
  return classed(
    'dl',
    'e-contacts',
    ...all.map(({ label, name, phone, more }) =>
      element(
        'div',
        element('dt', label),
        element(
          'dd',
          classed(
            'span',
            'e-name',
            filledIn(name, blank),
            ...(more === '' ? [] : [' ', classed('span', 'e-soft', more)]),
          ),
          classed('span', 'e-phone', filledIn(phone, blank)),
        ),
      ),
    ),
  )
}

/** The emergency page as it will hang at the gate; what is still blank is a line on it. */
export function emergencySheet({ manual, library: { words } }: Shown): HTMLElement {
  const view = emergencyView({ manual, words }, 'paper')
  const { blank } = words.emergency
  const line = ({ label, text }: { readonly label: string; readonly text: string }) => ({
    label,
    inside: [filledIn(text, blank)],
  })
  const stops = view.stops.map((c) =>
    classed('span', 'e-stop', `${c.name}, ${c.role} `, classed('span', 'live-whole', c.phone)),
  )
  const who = {
    label: words.emergency.stopWho,
    inside: stops.length > 0 ? stops : [filledIn('', blank)],
  }
  const dial = classed('span', `e-dial${view.longNumber ? ' e-dial-long' : ''}`)
  dial.append(filledIn(view.number, blank))
  const kept = linesOf(view.kept.map(line))
  kept.classList.add('e-kept')
  return classed(
    'div',
    'emergency',
    step(
      [`1 ${words.emergency.stop}`],
      classed('p', 'e-words', words.emergency.stopWords),
      linesOf([line(view.radio), who]),
    ),
    step(
      [`2 ${words.emergency.call}`, dial],
      classed('p', 'e-words', `${words.emergency.say} ${view.facility}`),
      linesOf(view.place.map(line)),
    ),
    step([`3 ${words.emergency.meet}`], linesOf([line(view.meetingPoint)])),
    element('div', classed('p', 'e-who', words.emergency.who), called(view, blank)),
    kept,
  )
}
