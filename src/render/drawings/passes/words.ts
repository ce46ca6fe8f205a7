import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type ContextFor, labels } from '../drawing.ts'

export const wording = labels('passes', {
  ...entries(
    'rail',
    'outside',
    'startRail',
    'startOutside',
    'moveOut',
    'moveIn',
    'moveHere',
    'moveLap',
    'lastLap',
    'loose',
    'outHere',
    'inHere',
    'row',
    'noGate',
    'horses',
    'machine',
    'bladeDown',
    'bladeUp',
    'cutterDown',
    'cutterUp',
    'sprayOn',
    'sprayOff',
    'noStop',
    'keepRolling',
  ),
  in: holding('gate'),
  out: holding('gate'),
  laps: holding('laps'),
  adds: holding('width'),
  lap: holding('number'),
  perStrip: holding('strips', 'laps'),
  eachTruck: holding('laps'),
  truck: holding('number'),
  ends: holding('number'),
  twice: holding('overlap'),
  againOne: holding('number'),
  again: holding('from', 'to'),
  againShort: holding('from', 'to'),
  wider: holding('factor'),
  widerShort: holding('factor'),
  strips: holding('strips', 'width'),
})

export type PassContext = ContextFor<typeof wording>

/** What a driver does with the tool where work begins, and where he leaves. */
const tools = {
  grade: ['bladeDown', 'bladeUp'],
  'grade-band': ['bladeDown', 'bladeUp'],
  condition: ['cutterDown', 'cutterUp'],
  spray: ['sprayOn', 'sprayOff'],
} as const

/** What is dragged or rolls has no up and down. */
export const toolWords = (figure: string, { words }: PassContext): readonly [string, string] => {
  const [on, off] = tools[figure as keyof typeof tools] ?? (['noStop', 'keepRolling'] as const)
  return [words[on], words[off]]
}
