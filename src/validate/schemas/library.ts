import * as z from 'zod'
import { contactRoles } from './contacts.ts'
import { figureName, id, line, prose, written } from './text.ts'
import { when } from './when.ts'

/**
 * A caution: the hazard, what it can do, and how to avoid it. Signal words as ANSI Z535.6 uses
 * them.
 */
const caution = z.strictObject({
  id,
  signal: z.enum(['danger', 'warning', 'caution', 'notice']),
  /**
   * The hazard and what it can do, in one short sentence: "A truck can hit a horse or a person."
   */
  hazard: line,
  /**
   * How to avoid it, as orders: "Close every gate. Radio “track closed” before the first truck
   * moves."
   */
  avoid: line,
  /** What else is worth knowing; it stands in the chapter of hazards alone. */
  more: line.optional(),
  /** Somebody drives or runs a machine wherever this can happen. */
  machine: z.literal(true).optional(),
  /** Law, standard or practice behind it. */
  sources: z.array(id).min(1),
  when: when.optional(),
})

export const cautions = z.strictObject({ cautions: z.array(caution).min(1) })

/** Something seen on the track, in the words that people use. */
const symptom = z.strictObject({
  id,
  /** In horsemen's words: "The track is cuppy at the rail". */
  says: line,
  /** What that looks like to the crew. */
  looks: line,
  /**
   * Answers that fit it, by the questions of chooser.yaml; a question that is left out says nothing
   * about it.
   */
  marks: z.record(id, z.array(id).min(1)),
  /** Checks that tell the causes apart, each by what is done for it and with what it leads to. */
  causes: z
    .array(
      z.strictObject({ check: line, by: id, cause: line, procedure: id, when: when.optional() }),
    )
    .min(1),
  /** When racing must stop. */
  stop: line,
})

export const symptoms = z.strictObject({ symptoms: z.array(symptom).min(1) })

/** A shelf of the binder. */
export const sections = z.strictObject({
  sections: z
    .array(
      z.strictObject({
        id,
        title: line,
        about: line,
        /** Its procedures stand on the first page of the site, each with its first number. */
        front: z.literal(true).optional(),
      }),
    )
    .min(1),
})

export const glossary = z.strictObject({
  terms: z
    .array(
      z.strictObject({
        term: line,
        means: line,
        /** A beginner carries it along in the field book. */
        pocket: z.literal(true).optional(),
      }),
    )
    .min(1),
})

/** Words that readers would not say, each with what they would; of this language alone. */
export const notSaid = z.strictObject({
  words: z.record(z.string(), z.string()),
})

/**
 * An input, by fact path, and its values as people write them; of those up to a fact of the
 * facility only the last few are kept.
 */
const axis = z.strictObject({
  fact: figureName,
  label: line.optional(),
  'up-to': figureName.optional(),
  us: z.array(written).min(2),
  metric: z.array(written).min(2),
})

/** A table of one calculation over values that change in the field. */
const reckoner = z.strictObject({
  id,
  title: line,
  about: line,
  figure: figureName,
  /** The other end where the answer is a range. */
  to: figureName.optional(),
  /** The input that runs down the rows. */
  rows: axis,
  columns: axis.optional(),
  /** Several figures side by side instead of a second input. */
  figures: z
    .array(z.strictObject({ figure: figureName, to: figureName.optional(), label: line }))
    .optional(),
  when: when.optional(),
})

export const reckoners = z.strictObject({ reckoners: z.array(reckoner).min(1) })

/** A chapter of running text in the binder and on the site. */
export const chapter = z.strictObject({
  id,
  title: line,
  order: z.int(),
  place: z.enum(['front', 'back']),
  text: prose,
})

/** Text of a finding; what sets it off is a rule in compute/findings. */
const findingText = z.strictObject({
  id,
  severity: z.enum(['serious', 'plan', 'note']),
  /** The entry of a facility file that it belongs to, with dots: what cures it stands there. */
  ask: z.string().regex(/^[a-z]+(-[a-z]+)*(\.[a-z]+(-[a-z]+)*)*$/, {
    error: 'an entry of a facility file, such as "emergency.way"',
  }),
  /** Of a contact: the role that somebody needs. */
  role: z.enum(contactRoles).optional(),
  title: line,
  text: line,
  do: line,
})

export const findings = z.strictObject({ findings: z.array(findingText).min(1) })

export type Caution = z.infer<typeof caution>
export type Symptom = z.infer<typeof symptom>
export type Reckoner = z.infer<typeof reckoner>
export type Chapter = z.infer<typeof chapter>
export type FindingText = z.infer<typeof findingText>
