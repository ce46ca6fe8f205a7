/** What somebody has put in, as typed, and when: milliseconds since 1970. */
type PutIn = { readonly text: string; readonly at: number }

/** By the path of the fact, or `at.<clock>` for a time. */
export type AllPutIn = ReadonlyMap<string, PutIn>

const isEntry = (x: unknown): x is [string, string, number] =>
  Array.isArray(x) &&
  typeof x[0] === 'string' &&
  typeof x[1] === 'string' &&
  Number.isFinite(x[2]) &&
  x[1].length < 40

/** As it is kept on the phone. */
export const toText = (all: AllPutIn): string =>
  JSON.stringify([...all].map(([name, { text, at }]) => [name, text, at]))

/** From what is kept on the phone; what is no such text is nothing. */
export function fromText(kept: string | null): AllPutIn {
  let entries: unknown
  try {
    entries = JSON.parse(kept ?? '[]')
  } catch {
    entries = []
  }
  const list = Array.isArray(entries) ? entries.filter(isEntry) : []
  return new Map(list.map(([name, text, at]) => [name, { text, at }]))
}

const sign = 'today'

/** As the fragment of an address, which no browser sends to a host. */
export function toFragment(all: AllPutIn): string {
  const at = Math.max(0, ...[...all.values()].map((put) => put.at))
  const said = new URLSearchParams([
    [sign, String(Math.round(at / 60_000))],
    ...[...all].map(([name, { text }]): [string, string] => [name, text]),
  ])
  return `#${said}`
}

/** From the fragment of an address; nothing where it holds no numbers of a day. */
export function fromFragment(fragment: string): AllPutIn {
  const said = new URLSearchParams(fragment.replace(/^#/, ''))
  const at = 60_000 * Number(said.get(sign))
  if (!said.get(sign) || !Number.isFinite(at)) return new Map()
  return new Map(
    [...said]
      .filter(([name, text]) => name !== sign && text.length < 40)
      .map(([name, text]) => [name, { text, at }]),
  )
}

/** Whether two moments lie on one day of this phone. */
export const sameDay = (a: number, b: number): boolean =>
  new Date(a).toDateString() === new Date(b).toDateString()
