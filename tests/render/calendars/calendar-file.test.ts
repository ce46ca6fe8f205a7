import ICAL from 'ical.js'
import { describe, expect, it } from 'vitest'
import { calendarFile } from '../../../src/render/calendars/calendar-file.ts'
import { demoManual, demos } from '../../support/demo.ts'

/** What another program makes of a calendar: ical.js, which reads RFC 5545 by itself. */
async function readBack(demo: string, calendar: string) {
  const { manual } = await demoManual(demo)
  const own = manual.calendars.find((c) => c.id === calendar)
  if (!own) throw new Error(`${demo} has no calendar ${calendar}`)
  const text = calendarFile(own, manual)
  const events = new ICAL.Component(ICAL.parse(text))
    .getAllSubcomponents('vevent')
    .map((e) => new ICAL.Event(e))
  return { own, text, events, manual }
}

describe('a calendar file', () => {
  it.each(demos)('of %s is read back by another program, entry by entry', async (demo) => {
    const { manual } = await demoManual(demo)
    for (const { id } of manual.calendars) {
      const { own, events } = await readBack(demo, id)
      expect(events).toHaveLength(own.entries.length)
      expect(new Set(events.map((e) => e.uid)).size).toBe(own.entries.length)
      for (const e of events) {
        expect(e.summary).not.toMatch(/[{}]|undefined/)
        expect(e.endDate.compare(e.startDate)).toBe(1)
      }
    }
  })

  it('has lines of at most 75 bytes that end as RFC 5545 asks', async () => {
    const { text } = await readBack('larkmoor', 'superintendent')
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true)
    for (const line of text.split('\r\n')) {
      expect(line).not.toContain('\n')
      expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75)
    }
  })

  it('says a task as a whole day that leaves people free', async () => {
    const { events } = await readBack('larkmoor', 'superintendent')
    const order = events.find((e) => e.summary === 'Order grit')
    expect(order?.startDate.isDate).toBe(true)
    expect(order?.startDate.toString()).toBe('2027-07-03')
    expect(order?.endDate.toString()).toBe('2027-07-04')
    expect(order?.component.getFirstPropertyValue('transp')).toBe('TRANSPARENT')
  })

  it('says hours as moments: 11:40 in the morning of Chicago in summer is 16:40 of Universal Time', async () => {
    const { events } = await readBack('larkmoor', 'on-foot')
    const gate = events.find((e) => e.summary === 'Gate crew')
    expect(gate?.startDate.toJSDate().toISOString()).toBe('2027-08-03T16:40:00.000Z')
    const there = new Intl.DateTimeFormat('en-US', {
      timeZone: 'America/Chicago',
      timeStyle: 'short',
    }).format(gate?.startDate.toJSDate())
    expect(there.replace(/\s/g, ' ')).toBe('11:40 AM')
  })

  it('keeps the identity of an entry whose date has moved', async () => {
    const { own, manual } = await readBack('larkmoor', 'superintendent')
    const later = {
      ...own,
      entries: own.entries.map((e) => ({
        ...e,
        time: { kind: 'day' as const, date: '2027-09-01' },
      })),
    }
    const uids = (text: string): string[] => text.match(/^UID:.*$/gm) ?? []
    expect(uids(calendarFile(later, manual))).toEqual(uids(calendarFile(own, manual)))
  })
})
