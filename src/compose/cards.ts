import type { ManualCard } from '../model/manual/card.ts'
import type { ManualCaution } from '../model/manual/caution.ts'
import type { Contact } from '../model/manual/emergency.ts'
import type { ManualReckoner } from '../model/manual/reckoner.ts'
import type { Card } from '../validate/schemas/cards.ts'
import { applies, type Circumstances } from './applies.ts'
import { type ComposeContext, isKnown, itemsOf } from './context.ts'
import { cautionsHere } from './procedures/cautions.ts'

/** What a card has room for. */
export const cardRoom = { figures: 6, phones: 10 } as const

export type CardContext = {
  readonly here: Circumstances
  /** Whether a quantity has a value here. */
  readonly known: (name: string) => boolean
  readonly caution: (id: string) => ManualCaution | undefined
  readonly reckoner: (id: string) => ManualReckoner | undefined
  readonly contacts: readonly Contact[]
}

const saysSomething = (r: ManualReckoner): boolean =>
  r.rows.some((row) => row.cells.some((c) => c !== '–'))

function composeCard(card: Card, context: CardContext): ManualCard {
  const { here, known, contacts } = context
  return {
    id: card.id,
    title: card.title,
    for: card.for,
    figures: card.figures
      .filter((f) => applies(f.when, here) && known(f.figure))
      .slice(0, cardRoom.figures)
      .map((f) => ({ name: f.figure, label: f.label })),
    reckoner: (card.reckoners ?? [])
      .flatMap((id) => context.reckoner(id) ?? [])
      .find(saysSomething),
    cautions: card.cautions.flatMap((id) => context.caution(id) ?? []),
    phones: (card.phones ?? [])
      .flatMap((role) => contacts.filter((c) => c.role === role))
      .slice(0, cardRoom.phones),
  }
}

/** The cards that have a number to show: only quantities that are known, and no card without one. */
export const cardsOf = (cards: readonly Card[], context: CardContext): readonly ManualCard[] =>
  cards
    .filter((c) => applies(c.when, context.here))
    .map((c) => composeCard(c, context))
    .filter((c) => c.figures.length > 0)

/** The pocket cards of a facility. */
export function composeCards(context: ComposeContext): readonly ManualCard[] {
  const { library, here, parts } = context
  const cautions = cautionsHere(context)
  return cardsOf(itemsOf(library.cards), {
    here,
    contacts: parts.contacts,
    known: (name) => isKnown(name, context),
    caution: (id) => cautions.get(id),
    reckoner: (id) => parts.reckoners.find((r) => r.id === id),
  })
}
