import * as z from 'zod'
import type { Manual } from '../../model/manual.ts'
import { fill } from '../../model/pattern.ts'
import { line } from '../../validate/schemas/text.ts'
import type { Words } from '../../validate/schemas/words.ts'
import { type Drawn, drawnBefore, keepDrawn, readingOf } from './kept-drawings.ts'
import { screenSvg } from './screen-svg.ts'
import type { DrawingSize } from './sizes.ts'

/** A drawing with what to see in it; `alt` says the same to those who do not see it. */
export type Drawing = {
  /** As SVG, laid out for a width, one unit a point in print. */
  readonly at: (size: DrawingSize) => string
  /** The same in fewer characters, for screens. */
  readonly onScreen: (size: DrawingSize) => string
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

/** What is said of a drawing beside it. */
type About = Omit<Drawing, 'at' | 'onScreen'>

/** A drawing as far as it is drawn, and what draws the rest. */
type Started = {
  readonly drawn: Drawn<About>
  readonly draw: (size: DrawingSize) => string
}

/** For each drawing what keeps it as far as it is drawn by now. */
const keepers = new WeakMap<Drawing, () => void>()

/** Keeps a drawing for later commands, where more of it is drawn than was kept. */
export const keepDrawing = (drawing: Drawing): void => keepers.get(drawing)?.()

/** A drawing that is laid out for each size when somebody asks. */
function drawingOf({ drawn: { about, laid }, draw }: Started): Drawing {
  const once = (form: Parameters<typeof laid.get>[0], make: () => string): string => {
    const made = laid.get(form) ?? make()
    laid.set(form, made)
    return made
  }
  const at = (size: DrawingSize): string => once(size, () => draw(size))
  return {
    at,
    onScreen: (size) => once(`${size} on screen`, () => screenSvg(at(size))),
    ...about,
  }
}

/** All of one drawing: what it is called, what it needs, how it is drawn, what it says in words. */
export function declareDrawing<const N extends string, L>(spec: Spec<N, L>): DeclaredDrawing<N> {
  const { name, needs, draw, numbers } = spec
  return {
    name,
    labels: spec.labels,
    render: (manual, words) => {
      const given = [words.drawings[name], words.labels[spec.labels.group], words.drawing.number]
      const wording = JSON.stringify(given)
      const reading = readingOf(manual)
      const { q, si } = reading
      const context = (alt: string): DrawingContext<L> => ({
        manual: reading.manual,
        words: spec.labels.schema.parse(words.labels[spec.labels.group]),
        q,
        si,
        alt,
      })
      const begin = (): Drawn<About> | undefined => {
        if (needs !== undefined && q(needs) === '') return undefined
        const { number, title, caption } = drawingWords.parse(words.drawings[name])
        const called = fill(words.drawing.number, { number: String(number) })
        // The caption is read out beside it, and so is not repeated.
        const alt = `${called}: ${title}. ${numbers(context(''))}`
        const page = draw(context(alt), 'page')
        if (page === '') return undefined
        return { about: { number, called, title, alt, caption }, laid: new Map([['page', page]]) }
      }
      const before = drawnBefore<About>(name, wording, reading)
      const drawn = before ?? begin()
      if (!drawn) return undefined
      let kept = before ? drawn.laid.size : 0
      const drawing = drawingOf({ drawn, draw: (size) => draw(context(drawn.about.alt), size) })
      keepers.set(drawing, () => {
        if (drawn.laid.size > kept) keepDrawn(name, wording, reading, drawn)
        kept = drawn.laid.size
      })
      return drawing
    },
  }
}
