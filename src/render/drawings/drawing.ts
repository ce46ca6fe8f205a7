import * as z from 'zod'
import type { Manual } from '../../model/manual.ts'
import { fill } from '../../model/pattern.ts'
import { line } from '../../validate/schemas/text.ts'
import type { Words } from '../../validate/schemas/words.ts'
import type { DrawingSize } from './sizes.ts'

/** A drawing with what to see in it; `alt` says the same to those who do not see it. */
export type Drawing = {
  /** As SVG, laid out for a width, one unit a point in print. */
  readonly at: (size: DrawingSize) => string
  /** The same in every form of every manual; never given to another drawing. */
  readonly number: number
  /** How it is cited, such as "Drawing 12". */
  readonly called: string
  /** As in a list of drawings. */
  readonly title: string
  readonly alt: string
  readonly caption: string
}

/** Words inside the drawings of one file: a group below `labels` in the file of words. */
type Labels<L> = { readonly group: string; readonly schema: z.ZodType<L> }

/**
 * Declares the labels of a file of drawings. They are held against the file of words when it is
 * loaded: a missing or unknown one is a fault with its line.
 */
export const labels = <S extends z.core.$ZodLooseShape>(group: string, shape: S) => ({
  group,
  schema: z.strictObject(shape),
})

/** What a drawing is made from; `L` are its labels. */
type DrawingContext<L = unknown> = {
  readonly manual: Manual
  readonly words: L
  /** A quantity as printed; empty when it is not known, so that its label is left out. */
  readonly q: (name: string) => string
  /** The same in SI, for what is drawn to scale; undefined when it is not known. */
  readonly si: (name: string) => number | undefined
  /** What the drawing says to those who do not see it. */
  readonly alt: string
}

/** The context for drawings with these labels. */
export type ContextFor<G> = G extends Labels<infer L> ? DrawingContext<L> : never

type Spec<N extends string, L> = {
  /** Content names the drawing by this; its title and caption stand below it in the file of words. */
  readonly name: N
  readonly labels: Labels<L>
  /** A quantity without which the drawing says nothing. */
  readonly needs?: string
  /** As SVG for a width, one unit a point in print; empty where this facility has nothing to show. */
  readonly draw: (context: DrawingContext<L>, size: DrawingSize) => string
  /** What it shows, in words: every reading, measure and sign, in the order in which they are met. */
  readonly numbers: (context: DrawingContext<L>) => string
}

/** A drawing as the registry holds it. */
export type DeclaredDrawing<N extends string = string> = {
  readonly name: N
  readonly labels: Labels<unknown>
  /** Undefined where the facility's numbers do not allow it. */
  readonly render: (manual: Manual, words: Words) => Drawing | undefined
}

/** What the file of words says of every drawing. */
export const drawingWords = z.strictObject({ number: z.int().min(1), title: line, caption: line })

/** All of one drawing: what it is called, what it needs, how it is drawn, what it says in words. */
export function declareDrawing<const N extends string, L>(spec: Spec<N, L>): DeclaredDrawing<N> {
  const { name, needs, draw, numbers } = spec
  return {
    name,
    labels: spec.labels,
    render: (manual, words) => {
      const q = (quantity: string): string => {
        const found = manual.quantities[quantity]
        return found?.ok ? found.text : ''
      }
      const si = (quantity: string): number | undefined => manual.quantities[quantity]?.si
      if (needs !== undefined && q(needs) === '') return undefined
      const { number, title, caption } = drawingWords.parse(words.drawings[name])
      const own = spec.labels.schema.parse(words.labels[spec.labels.group])
      const called = fill(words.drawing.number, { number: String(number) })
      // The caption is read out beside it, and so is not repeated.
      const alt = `${called}: ${title}. ${numbers({ manual, words: own, q, si, alt: '' })}`
      const context = { manual, words: own, q, si, alt }
      const page = draw(context, 'page')
      if (page === '') return undefined
      const drawnAt = new Map<DrawingSize, string>([['page', page]])
      const at = (size: DrawingSize): string => {
        const made = drawnAt.get(size) ?? draw(context, size)
        drawnAt.set(size, made)
        return made
      }
      return { at, number, called, title, alt, caption }
    },
  }
}
