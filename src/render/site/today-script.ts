import type { DayFile, DayWords } from '../../model/today.ts'
import type { SiteContext } from './page.ts'

/** Under what a phone keeps the numbers of a facility: those of another are never taken for them. */
export const dayKey = ({ manual }: Pick<SiteContext, 'manual'>): string =>
  `today ${manual.facility.name}`

const wordsOf = ({ words }: SiteContext): DayWords => ({
  now: words.today.now,
  manual: words.today.manual,
  notKnown: words.today.notKnown,
  none: words.today.none,
  look: words.today.look,
  undo: words.today.undo,
  undoAll: words.today.undoAll,
  again: words.today.again,
  send: words.today.send,
  copied: words.today.copied,
  notSent: words.today.notSent,
  link: words.today.link,
  same: words.today.same,
  use: words.today.use,
  forget: words.today.forget,
  forThisPage: words.today.forThisPage,
  rest: words.today.rest,
  see: words.today.see,
  next: words.today.next,
  nowAt: words.today.nowAt,
  timeHint: words.today.timeHint,
  noTime: words.today.noTime,
  clear: words.today.clear,
  mine: words.today.mine,
  less: words.today.less,
  more: words.today.more,
  undoOne: words.today.undoOne,
  changed: words.today.changed,
  putInAt: words.today.putInAt,
  earlier: words.today.earlier,
  sent: words.today.sent,
  unread: words.today.unread,
  outside: words.today.outside,
  whole: words.today.whole,
  in: words.today.in,
  ago: words.today.ago,
  raceDay: words.today.raceDay,
  said: words.today.said,
})

/** What the script of the day's numbers works with. */
export function dayFile(site: SiteContext): DayFile {
  const { groups, programs, sums } = site.manual.today
  return {
    key: dayKey(site),
    estimate: site.words.figure.estimate,
    words: wordsOf(site),
    groups,
    programs,
    sums,
  }
}

/** The same as a script. */
export const dayScript = (site: SiteContext): string =>
  `var dayNumbers=${JSON.stringify(dayFile(site))}`
