import type { Path } from '../../read/read-yaml.ts'
import type { ContactRole } from '../../validate/schemas/contacts.ts'
import type { Change } from '../splice.ts'
import type { Value } from '../written.ts'
import { groupsAt, textAt, valueAt } from './data.ts'
import { measuredAt } from './measured.ts'

/** A name as a folder may be called by it: small letters, digits, hyphens. */
export const folderName = (name: string): string =>
  name
    .normalize('NFD')
    .toLowerCase()
    .replace(/[\s_]+/g, '-')
    .replace(/[^a-z0-9-]/g, '')
    .replace(/-+/g, '-')
    .replace(/^[-0-9]+|-+$/g, '')
    .slice(0, 60)
    .replace(/-+$/, '')

const papers: Readonly<Record<string, string>> = { us: 'letter', metric: 'a4' }

/** Changes that follow from an answer: the short name from the name, the paper from the units. */
function following(data: unknown, at: string, value: Value | undefined): readonly Change[] {
  if (at === 'name') {
    const id = textAt(data, ['id'])
    const isOwn = id !== undefined && id !== folderName(textAt(data, ['name']) ?? '')
    const next = folderName(typeof value === 'string' ? value : '')
    return isOwn ? [] : [{ path: ['id'], value: next === '' ? undefined : next }]
  }
  if (at === 'units') {
    const paper = textAt(data, ['paper'])
    const isOwn = paper !== undefined && paper !== papers[textAt(data, ['units']) ?? '']
    return isOwn ? [] : [{ path: ['paper'], value: papers[String(value)] }]
  }
  return []
}

/**
 * The changes that an answer makes. A measurement goes before what is stated, so that where there
 * is one its value is what changes.
 */
export function answerChanges(
  data: unknown,
  at: Path,
  value: Value | undefined,
): readonly Change[] {
  const measured = measuredAt(data, at)
  if (measured)
    return value === undefined
      ? [{ path: ['measurements', measured.index], value }]
      : [{ path: ['measurements', measured.index, 'value'], value }]
  return [{ path: at, value }, ...following(data, at.join('.'), value)]
}

/** The place of the first contact with a role; undefined where there is none. */
export function contactWith(data: unknown, role: ContactRole): number | undefined {
  const index = groupsAt(data, ['contacts']).findIndex((contact) => contact['role'] === role)
  return index === -1 ? undefined : index
}

/** Who may stop racing, with a role taken out or put in. */
function stopping(data: unknown, role: ContactRole, isThere: boolean): readonly Change[] {
  const path = ['emergency', 'stops-racing']
  const found = valueAt(data, path)
  const roles = Array.isArray(found) ? (found as string[]) : []
  if (isThere) return roles.length > 0 ? [] : [{ path, value: [role] }]
  if (!roles.includes(role)) return []
  const left = roles.filter((r) => r !== role)
  return [{ path, value: left.length > 0 ? left : undefined }]
}

/**
 * The changes of an answer about the person with a role, whose contact comes and goes with its name
 * and number.
 * @param stops Whether the question is who may stop racing.
 */
export function personChanges(
  data: unknown,
  role: ContactRole,
  field: 'name' | 'phone',
  value: string | undefined,
  stops: boolean,
): readonly Change[] {
  const contacts = groupsAt(data, ['contacts'])
  const index = contactWith(data, role)
  if (index === undefined) {
    if (value === undefined) return []
    return [
      { path: ['contacts', contacts.length], value: { role, [field]: value } },
      ...(stops ? stopping(data, role, true) : []),
    ]
  }
  const other = field === 'name' ? 'phone' : 'name'
  const isGone = value === undefined && valueAt(data, ['contacts', index, other]) === undefined
  if (isGone)
    return [...stopping(data, role, false), { path: ['contacts', index], value: undefined }]
  return [{ path: ['contacts', index, field], value }, ...(stops ? stopping(data, role, true) : [])]
}

/** The changes that bring a contact back that was left out for a while. */
export function contactBack(
  data: unknown,
  role: ContactRole,
  said: Readonly<Record<string, unknown>>,
  stops: boolean,
): readonly Change[] {
  const value = { ...said, role } as Value
  return [
    { path: ['contacts', groupsAt(data, ['contacts']).length], value },
    ...(stops ? stopping(data, role, true) : []),
  ]
}

/** The changes that make an answer a measurement: the value leaves its place for the list. */
export function measurementChanges(
  data: unknown,
  fact: string,
  at: Path,
  entry: { readonly date: string; readonly by: string },
): readonly Change[] {
  const value = valueAt(data, at)
  if (typeof value !== 'string' && typeof value !== 'number') return []
  const list = groupsAt(data, ['measurements'])
  return [
    { path: ['measurements', list.length], value: { of: fact, value, ...entry } },
    { path: at, value: undefined },
  ]
}
