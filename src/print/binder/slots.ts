const slot = /(<[^>]*\sdata-page-of="([^"]+)"[^>]*>)(<\/)/g

/** Places whose page numbers a document asks for. */
export const slotsIn = (body: string): string[] => [...new Set([...body.matchAll(slot)].map((m) => m[2] ?? ''))]

/** Puts page numbers into the empty slots; a place without one leaves its slot empty. */
export const fillSlots = (body: string, labels: Readonly<Record<string, string>>): string => body.replace(slot, (_, open: string, id: string, close: string) => `${open}${labels[id] ?? ''}${close}`)
