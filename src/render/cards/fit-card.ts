/** Width of text on a card and height of what is written on, mm: 3.5 × 5 in less its margins, as the style sheet sets them. */
const room = { width: 79.9, height: 119.2 } as const

/** Sizes of type at scale 1, points, as in the style sheet. */
const type = { title: 17, for: 6.8, number: 17, most: 18.5, label: 7, table: 7, head: 6.6, phone: 10, name: 7.6, caution: 6.8 } as const

/** Scales that are tried, the largest first. At the smallest, type is still as large as in a pocket diary. */
const scales = [1.3, 1.25, 1.2, 1.15, 1.1, 1.05, 1, 0.95, 0.9, 0.85] as const

const mm = (points: number): number => (points * 25.4) / 72

/** Mean width of a letter against the height of its type, with what is lost at the ends of lines. */
const letter = 0.455

const lines = (text: string, width: number, points: number): number => Math.max(1, Math.ceil((text.length * letter * mm(points)) / width))

/** What stands on a card, as plain words. */
export type CardContents = {
  readonly title: string
  readonly for: string
  readonly labels: readonly string[]
  readonly table: { readonly title: string; readonly heads: readonly string[]; readonly rows: number } | undefined
  readonly phones: readonly { readonly role: string; readonly name: string }[]
  readonly cautions: readonly string[]
}

const sizedAt = (scale: number) => (points: number, leading: number): number => mm(points * scale) * leading

function tableHeight({ title, heads, rows }: NonNullable<CardContents['table']>, scale: number): number {
  const sized = sizedAt(scale)
  const headLines = Math.max(...heads.map((h) => lines(h, room.width / heads.length, type.head * scale)))
  return lines(title, room.width, type.table * scale) * sized(type.table, 1.12) + 0.3 + headLines * sized(type.head, 1.12) + 0.7 + rows * (sized(type.table, 1.12) + 0.75)
}

/** Height of a card's contents at a scale, mm; guessed high rather than low, since what runs over is cut off. */
export function cardHeight(card: CardContents, scale: number): number {
  const sized = sizedAt(scale)
  const column = room.width / 3 - 3.5
  const labelRows = [0, 3, 6].map((i) => card.labels.slice(i, i + 3)).filter((row) => row.length > 0)
  const parts = [
    lines(card.title, room.width, type.title) * mm(type.title) + lines(card.for, room.width, type.for * scale) * sized(type.for, 1.15) + 1.6,
    labelRows.reduce((sum, row) => sum + mm(Math.min(type.number * scale, type.most)) * 1.25 + 0.5 + Math.max(...row.map((label) => lines(label, column, type.label * scale))) * sized(type.label, 1.1) + 1.6, 0) - 1.6,
    ...(card.table ? [tableHeight(card.table, scale)] : []),
    ...(card.phones.length > 0 ? [card.phones.reduce((sum, p) => sum + Math.max(sized(type.phone, 1.05), lines(p.name, 36, type.name * scale) * sized(type.name, 1.2), lines(p.role, 20, type.table * scale) * sized(type.table, 1.2)) + 1.3, 0)] : []),
    card.cautions.reduce((sum, text) => sum + lines(text, room.width - 18.5 * scale - 3.4, type.caution * scale) * sized(type.caution, 1.14) + 1.8 + 1, 0) - 1,
    4.6,
  ]
  return parts.reduce((sum, part) => sum + part, 0) + (parts.length - 1) * 1.6
}

/** How a card is set: the scale of its type, and how many of its telephone numbers there is room for. */
export type CardFit = { readonly scale: number; readonly phones: number }

/**
 * The largest scale at which everything fits; where nothing does, the last telephone numbers are left out, never a caution.
 * @throws RangeError when the card does not even fit without them.
 */
export function fitCard(card: CardContents): CardFit {
  for (let phones = card.phones.length; phones >= 0; phones--) {
    const scale = scales.find((s) => cardHeight({ ...card, phones: card.phones.slice(0, phones) }, s) <= room.height)
    if (scale !== undefined) return { scale, phones }
  }
  throw new RangeError(`the card "${card.title}" holds more than there is room for`)
}
