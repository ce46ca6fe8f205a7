const slot = /(<[^>]*\sdata-page-of="([^"]+)"[^>]*>)(<\/)/g

/** Places whose page numbers a document asks for. */
export const slotsIn = (body: string): string[] => [
  ...new Set([...body.matchAll(slot)].map((m) => m[2] ?? '')),
]

const listed = /<span class="at">(?:, )?<a [^>]*>([^<]*)<\/a><\/span>/g

/** Several places on one page are one number in an index. */
function onceEach(body: string): string {
  let end = -1
  const numbers = new Set<string>()
  return body.replace(listed, (all: string, label: string, at: number) => {
    if (at !== end) numbers.clear()
    end = at + all.length
    const again = numbers.has(label)
    numbers.add(label)
    return again ? '' : all
  })
}

/** Puts page numbers into the empty slots; a place without one leaves its slot empty. */
export const fillSlots = (body: string, labels: Readonly<Record<string, string>>): string =>
  onceEach(
    body.replace(
      slot,
      (_, open: string, id: string, close: string) => `${open}${labels[id] ?? ''}${close}`,
    ),
  )
