/** What is shorter takes no more room where it stands. */
const shortest = 100

/** Of a drawing that is laid out for two widths a phone's is kept: it is read on any screen. */
export const onePicture = (text: string): string =>
  text.replace(
    /<div class="on-wide">.*?<\/div><div class="on-narrow">(.*?)<\/div>/gs,
    '<div class="drawn">$1</div>',
  )

/** Pages in which each drawing is given once, with the drawings that several of them show. */
type DrawnOnce = {
  readonly pages: readonly string[]
  /** Inside of drawings, each a group with an id; to stand in one SVG that is not seen. */
  readonly drawings: string
}

const svg = /(<svg[^>]*>)(.*?)<\/svg>/gs

/** Takes drawings that are shown on several pages out of them. */
export function drawnOnce(pages: readonly string[]): DrawnOnce {
  const times = new Map<string, number>()
  for (const [, , inside = ''] of pages.join('').matchAll(svg))
    if (inside.length >= shortest) times.set(inside, (times.get(inside) ?? 0) + 1)
  const shared = [...times].filter(([, count]) => count > 1).map(([inside]) => inside)
  const id = (inside: string): string => `drawn~${shared.indexOf(inside) + 1}`
  return {
    pages: pages.map((page) =>
      page.replace(svg, (whole, open: string, inside: string) =>
        shared.includes(inside) ? `${open}<use href="#${id(inside)}"/></svg>` : whole,
      ),
    ),
    drawings: shared.map((inside) => `<g id="${id(inside)}">${inside}</g>`).join(''),
  }
}
