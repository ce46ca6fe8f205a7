import * as z from 'zod'
import type { IssueParams } from '../check-schema.ts'
import { figureName, id, line } from './text.ts'
import { when } from './when.ts'

/** What can be taken from a procedure, in its short form as posted sheets have it. */
const procedureShows = [
  'when',
  'figures',
  'measure',
  'look',
  'cautions',
  'drawing',
  'steps',
  'done',
  'failures',
  'stop',
] as const

/** What a part is taken from: exactly one of these is named. */
const sources = [
  'emergency',
  'say',
  'procedure',
  'plan',
  'reckoner',
  'card',
  'chapter',
  'drawing',
  'figures',
  'cautions',
  'symptoms',
  'terms',
  'findings',
] as const

const ids = z.array(id).min(1)

const shape = z.strictObject({
  emergency: z.literal(true).optional(),
  /** What to say to dispatch, in a few lines: number, address, gate, where help is met. */
  say: z.literal(true).optional(),
  procedure: id.optional(),
  plan: id.optional(),
  reckoner: id.optional(),
  /** Its large figures. */
  card: id.optional(),
  chapter: id.optional(),
  drawing: id.optional(),
  /** Large, each under its own label. */
  figures: z.array(figureName).min(1).optional(),
  cautions: ids.optional(),
  symptoms: ids.optional(),
  /** Those words of the glossary that are marked for the pocket. */
  terms: z.literal(true).optional(),
  findings: z.literal(true).optional(),
  /** Of a procedure, in this order. */
  show: z.array(z.enum(procedureShows)).min(1).optional(),
  /** Ways of working of a procedure; all that apply here when it is left out. */
  methods: ids.optional(),
  /** Tables of a plan; all when it is left out. */
  tables: ids.optional(),
  when: when.optional(),
})

/** Entries that only one kind of part has. */
const belongs = { show: 'procedure', methods: 'procedure', tables: 'plan' } as const

const fault = (message: string, hint: string) => ({
  code: 'custom' as const,
  message,
  params: { code: 'schema/format', hint } satisfies IssueParams,
})

/** One part of a page: where it is taken from, and what of it. */
const part = shape.superRefine((p, context) => {
  const named = sources.filter((s) => p[s] !== undefined)
  if (named.length !== 1)
    context.addIssue(
      fault(
        named.length === 0
          ? 'it is not said what this part is taken from'
          : `this part is taken from ${named.join(' and from ')}`,
        `name exactly one of: ${sources.join(', ')}`,
      ),
    )
  for (const [entry, source] of Object.entries(belongs))
    if (p[entry as keyof typeof belongs] !== undefined && p[source] === undefined)
      context.addIssue({
        ...fault(`only a ${source} has "${entry}"`, `leave "${entry}" out`),
        path: [entry],
      })
  if (p.procedure !== undefined && p.show === undefined)
    context.addIssue(
      fault('it is not said what of the procedure is shown', `show: ${procedureShows.join(', ')}`),
    )
})

const page = z.strictObject({
  id,
  title: line,
  when: when.optional(),
  /** Left out, the last of them first, where the book would be longer than what is carried. */
  spare: z.literal(true).optional(),
  parts: z.array(part).min(1),
})

/** What a beginner reads first in the binder. */
const first = z
  .strictObject({ procedure: id.optional(), chapter: id.optional(), plan: id.optional() })
  .refine((f) => Object.keys(f).length === 1, {
    error: 'one of: procedure, chapter, plan',
  })

/**
 * The field book, and the handout for volunteers: pages that take all they say from the rest of the
 * library, by id.
 */
export const fieldBook = z.strictObject({
  'read-first': z.array(first).min(1),
  handout: z.array(page).min(1),
  pages: z.array(page).min(1),
})

export type FieldBookFile = z.infer<typeof fieldBook>
export type FieldBookPart = z.infer<typeof part>
