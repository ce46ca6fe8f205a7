import * as z from 'zod'
import { capabilities } from '../../model/capability.ts'
import { takenSheetNames } from '../../model/sheet-names.ts'
import { helperRoles } from './contacts.ts'
import { figureName, id, line, prose } from './text.ts'
import { when } from './when.ts'

/** What is done in one step, by one person or crew, as one action. */
const step = z.strictObject({
  id: id.optional(),
  /** One action, beginning with a verb: "Cut both edges straight down to the full depth." */
  do: line,
  /** Why, how to tell, or what to mind; at most two short sentences. */
  note: line.optional(),
  /** The note saves a life, so that it stands on the posted sheet too. */
  vital: z.literal(true).optional(),
  /** Hazards of this step alone, by id: each a box above it. */
  cautions: z.array(id).optional(),
  /** Figures that stand in the margin beside this step. */
  figures: z.array(figureName).max(3).optional(),
  /** The drawing that shows it, by name: cited here by its number, and printed with the procedure. */
  drawing: id.optional(),
  when: when.optional(),
})

/** A way of doing the work: its own numbered steps. */
const method = z.strictObject({
  id,
  title: line,
  /** When to choose this way, in one sentence. */
  choose: line.optional(),
  when: when.optional(),
  steps: z.array(step).min(1),
})

/** A row of the table "what you found → what to do". */
const branch = z.strictObject({
  found: line,
  do: line,
  /** The method to follow, by id, or another procedure, by id. */
  method: id.optional(),
  procedure: id.optional(),
  when: when.optional(),
})

const check = z.strictObject({ text: line, when: when.optional() })

/**
 * In a list between brackets YAML parts a sentence at its commas; what follows one then begins with
 * a small letter.
 */
const sentence = line.refine(
  (text) => !/^\p{Ll}/u.test(text),
  'expected a sentence that begins with a capital letter; one with commas stands between double quotes',
)

const question = z.strictObject({
  ask: line,
  choices: z.array(sentence).min(2).max(5),
  /** Which choice is right, counted from 1. */
  right: z.int().min(1).max(5),
  why: line,
})

export const procedure = z.strictObject({
  id: id.refine((name) => !takenSheetNames.includes(name), {
    error: 'another id; a posted sheet has this name already',
  }),
  /** As a reader looks for it: "Seal before rain". Also the title of the posted sheet. */
  title: line,
  /** In a word or two, where it must be one touch from every page of the site. */
  bar: line.max(16, { error: 'a word or two of at most 16 characters' }).optional(),
  /** Shelf in the binder: prepare, daily, rain, repair, surface. */
  section: id,
  /** Place within the section. */
  order: z.int().min(1).max(999),
  /** One sentence: what is better afterwards. */
  purpose: line,
  when: when.optional(),
  /** What sets it off, each as one line. */
  triggers: z.array(line).min(1),
  /** Things seen on the track that lead here, by id in symptoms. */
  symptoms: z.array(id).optional(),
  who: z.strictObject({
    people: z.int().min(1).max(20),
    /** Who does what, in one sentence. */
    roles: line,
    /** Who may decide to begin and to stop. */
    authority: line,
  }),
  /** How long it takes: a figure, and words where needed. */
  time: z
    .strictObject({ figure: figureName.optional(), text: line.optional(), when: when.optional() })
    .array()
    .min(1),
  needs: z
    .array(z.strictObject({ can: z.enum(capabilities), why: line, instead: line.optional() }))
    .optional(),
  /** Hand tools and measuring gear. */
  tools: z.array(line).optional(),
  materials: z
    .array(z.strictObject({ name: line, figure: figureName.optional(), when: when.optional() }))
    .optional(),
  /**
   * Hazards of the whole work, or of several of its steps, by id: lines of one box that stands
   * before anything else.
   */
  cautions: z.array(id).min(1).max(5),
  /** What to look at or measure before starting. */
  measure: z
    .array(
      z.strictObject({
        do: line,
        how: line.optional(),
        /** Drawing that shows how, by id. */
        drawing: id.optional(),
        when: when.optional(),
      }),
    )
    .min(1),
  branches: z.array(branch).optional(),
  methods: z.array(method).min(1),
  /** Acceptance: it is right when … */
  checks: z.array(check).min(1),
  /** If it is not right: what you see, what to do. */
  failures: z
    .array(z.strictObject({ see: line, do: line, procedure: id.optional(), when: when.optional() }))
    .min(1),
  /** Limits of authority: stop and call. */
  stop: z.array(check).min(1),
  records: z.array(line).min(1),
  /** Why it works: trade practice, each marked as what it is. */
  background: z.array(z.strictObject({ text: prose, source: id, when: when.optional() })).min(1),
  references: z.array(id).optional(),
  reckoners: z.array(id).optional(),
  next: id.optional(),
  sheet: z.strictObject({
    /** One line under the title: when to do it. */
    when: line,
    /** Up to five large figures, each with the words that stand under it. */
    figures: z
      .array(z.strictObject({ figure: figureName, label: line, when: when.optional() }))
      .min(1)
      .max(8),
    /** Who may have to be called; with number and place they stand first on the sheet. */
    calls: z.array(z.enum(helperRoles)).min(1).optional(),
    /** Which of the drawings that the steps cite stands on the sheet. */
    drawing: id.optional(),
    done: z.array(check).min(1).max(4),
    reckoner: id.optional(),
  }),
  training: z.strictObject({
    aims: z.array(sentence).min(1),
    show: z.array(sentence).min(1),
    practice: z.array(sentence).min(1),
    /** What a learner looks at to answer the questions. */
    drawing: id.optional(),
    questions: z.array(question).min(2),
  }),
})

export type Procedure = z.infer<typeof procedure>
export type ProcedureStep = z.infer<typeof step>
export type ProcedureMethod = z.infer<typeof method>
