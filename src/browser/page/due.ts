import { isClose } from '../../model/day.ts'
import { nextDue } from './next-due.ts'

/** The day that a phone shows, as it is written in the pages. */
const dayOf = (now: Date): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-')

/** Shows the plan for the last days where today is one of them. */
function showLastDays(today: string): void {
  const door = document.querySelector<HTMLElement>('.doors [data-race]')
  if (door) door.hidden = !isClose(door.dataset['race'], today)
}

/** Shows what is due from today on in place of what was due when the manual was made. */
export function showDue(now: Date): void {
  showLastDays(dayOf(now))
  const section = document.querySelector<HTMLElement>('.due')
  if (!section) return
  const items = [...section.querySelectorAll('li')]
  const dates = items.map((item) => item.querySelector('time')?.dateTime ?? '')
  const next = nextDue(dates, dayOf(now), Number(section.dataset['shown']))
  // After the fair nothing is due: the page then keeps what it said.
  if (next.length === 0) return
  for (const [i, item] of items.entries()) item.hidden = !next.includes(i)
  section.querySelector('[data-made]')?.remove()
}
