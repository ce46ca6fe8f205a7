import { courseOf } from './course.ts'
import { findRoom, type Room } from './room.ts'
import { shelf } from './shelf.ts'
import { take } from './take.ts'

/** A role can be begun, or gone on with; the page then shows nothing else. */
function offer(box: HTMLElement, room: Room, others: Iterable<HTMLElement>): void {
  const button = box.querySelector('button')
  if (!button) return
  const key = `ovalkeep.lessons.${room.study.dataset['whose']}.${box.id}`
  const course = courseOf(box)
  const begin = button.textContent
  const name = (): void => {
    const words = shelf.get(key) === null ? begin : button.dataset['goOn']
    button.textContent = words ?? ''
    button.setAttribute('aria-label', `${words}: ${course.name}`)
  }
  const only = (study: boolean): void => {
    for (const other of others) other.hidden = study
    room.study.hidden = !study
  }
  name()
  button.addEventListener('click', () => {
    only(true)
    const end = take(course, room, key)
    room.leave.addEventListener(
      'click',
      () => {
        end()
        only(false)
        name()
        button.focus()
      },
      { once: true },
    )
  })
}

/** Lessons by role, on the page of all lessons. */
export function learnPage(): void {
  const room = findRoom()
  if (!room) return
  const others = document.querySelectorAll<HTMLElement>('.courses, .lessons, h1 + p')
  for (const line of document.querySelectorAll<HTMLElement>('.only-script')) line.hidden = false
  for (const box of document.querySelectorAll<HTMLElement>('.course')) offer(box, room, others)
  room.study.querySelector('.print')?.addEventListener('click', () => print())
}
