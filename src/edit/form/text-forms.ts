import { clock, date, phone, prose } from '../../validate/schemas/text.ts'

const forms = [
  [date, 'date'],
  [clock, 'time'],
  [phone, 'phone'],
  [prose, 'long-text'],
] as const

type Layer = { readonly _zod?: { readonly def?: { readonly innerType?: unknown } } }

/** What a text of the schema must look like, where it is more than a line. */
export function formOf(schema: unknown): (typeof forms)[number][1] | undefined {
  const found = forms.find(([form]) => form === schema)?.[1]
  const inner = (schema as Layer | undefined)?._zod?.def?.innerType
  return found ?? (inner === undefined ? undefined : formOf(inner))
}
