import * as z from 'zod'
import { entryAbout, factAt } from '../../model/entry-about.ts'
import type { FactSpec } from '../../model/fact-spec.ts'
import { kindOf } from '../../model/quantity/kinds.ts'
import { quantityPattern } from '../../model/quantity/units-pattern.ts'

/** A part of a JSON Schema (draft 7). */
type Node = { [key: string]: unknown }

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

const isPlain = (spec: FactSpec): boolean => ['ratio', 'count', 'whole'].includes(spec.kind)

/** What may stand for a quantity of a kind. */
function quantityDefinition(spec: FactSpec): Node {
  const text = {
    type: 'string',
    pattern: quantityPattern(kindOf(spec.kind).dims, isPlain(spec)),
    patternErrorMessage: 'expected a number with its unit, as in the example',
  }
  return isPlain(spec) ? { anyOf: [{ type: 'number' }, text] } : text
}

/** Quantities of one dimension are written alike; a definition is called by its first kind. */
function definitionFor(spec: FactSpec, definitions: Node): string {
  const made = quantityDefinition(spec)
  const text = JSON.stringify(made)
  const known = Object.keys(definitions).find((name) => JSON.stringify(definitions[name]) === text)
  if (known !== undefined) return known
  definitions[spec.kind] = made
  return spec.kind
}

const parsed = (example: string): unknown =>
  /^-?\d+(\.\d+)?$/.test(example) ? Number(example) : example.replace(/^"(.*)"$/, '$1')

/** Label, how to measure, example: what an editor shows beside an entry. */
function words(path: readonly string[], node: Node): Node {
  const about = entryAbout(path)
  if (!about) return {}
  const spec = factAt(path)
  const range = spec ? ` From ${spec.range[0]} to ${spec.range[1]}.` : ''
  const isValue = !('properties' in node) && !('items' in node)
  return {
    title: about.label,
    ...(about.howTo === undefined ? {} : { description: `${about.howTo}${range}` }),
    ...(about.example === undefined || !isValue ? {} : { examples: [parsed(about.example)] }),
  }
}

/** A schema with words and quantities put in where they belong. */
function told(node: Node, path: readonly string[], definitions: Node): Node {
  const spec = factAt(path)
  const isOpen = Object.keys(node).length === 0
  const quantity =
    spec && isOpen ? { allOf: [{ $ref: `#/definitions/${definitionFor(spec, definitions)}` }] } : {}
  const { properties, items } = node
  return {
    ...words(path, node),
    ...node,
    ...quantity,
    ...(isNode(properties)
      ? {
          properties: Object.fromEntries(
            Object.entries(properties).map(([key, inner]) => [
              key,
              told(isNode(inner) ? inner : {}, [...path, key], definitions),
            ]),
          ),
        }
      : {}),
    ...(isNode(items) ? { items: told(items, path, definitions) } : {}),
  }
}

/** A schema as JSON Schema of draft 7, which editors read. */
const plainSchema = (schema: z.ZodType): Node =>
  z.toJSONSchema(schema, { io: 'input', target: 'draft-7', unrepresentable: 'any' }) as Node

/**
 * The JSON Schema of a facility file: with labels, how to measure, examples, and a pattern for each
 * quantity. It refuses nothing that the program accepts; ranges and references it does not see.
 */
export function facilityJsonSchema(schema: z.ZodType): Node {
  const definitions: Node = {}
  const { $schema, ...node } = plainSchema(schema)
  const whole = told(node, [], definitions)
  return { $schema, title: 'A facility file', ...whole, definitions }
}

/** The JSON Schema of a file of the library. */
export const libraryJsonSchema = (schema: z.ZodType, title: string): Node => {
  const { $schema, ...node } = plainSchema(schema)
  return { $schema, title, ...node }
}
