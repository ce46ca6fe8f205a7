import ical, { ICalCalendarMethod, ICalEventTransparency } from 'ical-generator'
import { addDays, startOf } from '../../model/day.ts'
import type { CalendarTime, ManualCalendar } from '../../model/manual/calendar.ts'
import type { Manual } from '../../model/manual.ts'
import { plainWords } from '../text/render-text.ts'

/** Where the calendars of a manual lie. */
export const calendarFolder = 'calendars'

/** Hours without a zone are times of the reader's own clock. */
const timeOf = (time: CalendarTime) =>
  time.kind === 'day'
    ? { allDay: true, start: startOf(time.date), end: startOf(addDays(time.date, 1)) }
    : {
        start: new Date(time.from.endsWith('Z') ? time.from : `${time.from}Z`),
        end: new Date(time.to.endsWith('Z') ? time.to : `${time.to}Z`),
        floating: !time.from.endsWith('Z'),
      }

/**
 * A calendar as a file (RFC 5545) that telephones and mail programs take in. Entries keep their
 * identity from revision to revision, so that taking in a newer file moves them.
 */
export function calendarFile(calendar: ManualCalendar, manual: Manual): string {
  const { facility, quantities, date } = manual
  const text = (words: string): string => plainWords(words, quantities)
  const file = ical({
    name: `${facility.name}: ${calendar.title}`,
    description: calendar.about,
    prodId: { company: 'Ovalkeep', product: 'Ovalkeep', language: facility.lang.toUpperCase() },
    method: ICalCalendarMethod.PUBLISH,
  })
  for (const entry of calendar.entries)
    file.createEvent({
      id: `${facility.id}-${entry.id}@ovalkeep.invalid`,
      // A newer revision stands above an older one.
      sequence: /^\d+$/.test(facility.revision) ? Number(facility.revision) : 0,
      stamp: startOf(date),
      summary: text(entry.title),
      ...(entry.notes.length > 0 ? { description: entry.notes.map(text).join('\n') } : {}),
      ...(entry.time.kind === 'hours' ? { location: facility.name } : {}),
      // A task with a date keeps nobody from being called that day.
      transparency:
        entry.time.kind === 'day'
          ? ICalEventTransparency.TRANSPARENT
          : ICalEventTransparency.OPAQUE,
      ...timeOf(entry.time),
    })
  return `${file.toString()}\r\n`
}

/** Where the calendar of a reader lies, in the folder of the manual and beside the pages. */
export const calendarPath = ({ id }: ManualCalendar): string => `${calendarFolder}/${id}.ics`
