/** One named page of the binder: what runs at its head, and the tab at its edge. */
export type NamedPage = { readonly name: string; readonly left: string; readonly right: string; readonly tab: { readonly text: string; readonly place: number } | undefined }

const quote = (text: string): string => `"${text.replace(/\\/g, '\\\\').replace(/"/g, '\\"').replace(/\n/g, ' ')}"`

const sizes = { letter: '8.5in 11in', a4: '210mm 297mm' } as const

/** Margins in inches: `bound` leaves room for punched holes. Both pages of a leaf have the same text width. */
export const margins = { top: 0.95, bottom: 0.85, bound: 1.15, outer: 0.75 } as const

const boxes = ['top-left', 'top-center', 'top-right', 'bottom-left', 'bottom-center', 'bottom-right', 'left-top', 'right-top']
const noBoxes = boxes.map((b) => `@${b}{content:none;background:none;border:none}`).join('')

/** Tabs share the height between the margins; few stand closer together than they need to. */
function tabStep(pages: readonly NamedPage[], paper: keyof typeof sizes): number {
  const count = 1 + Math.max(0, ...pages.map((p) => p.tab?.place ?? 0))
  return Math.min(0.82, ((paper === 'letter' ? 11 : 297 / 25.4) - margins.top - margins.bottom) / count)
}

function tabBox(side: 'left' | 'right', tab: NamedPage['tab'], step: number): string {
  const other = side === 'left' ? 'right' : 'left'
  if (!tab) return `@${side}-top{content:none;background:none}@${other}-top{content:none;background:none}`
  const down = (tab.place * step).toFixed(3)
  const margin = side === 'right' ? `${down}in 0 auto auto` : `${down}in auto auto 0`
  return `@${side}-top{content:${quote(tab.text)};background:#5c4a3a;color:#fff;width:.38in;height:${(step - 0.1).toFixed(3)}in;margin:${margin};vertical-align:middle;text-align:center;font:600 15pt "Barlow Condensed"}@${other}-top{content:none;background:none}`
}

/** Rules of one named page, for right-hand and left-hand sides: the page number stands outside. */
function pageRules(p: NamedPage, foot: string, counter: string, increment: string, step: number): string {
  const head = `@top-left{content:${quote(p.left)}}@top-right{content:${quote(p.right)}}`
  const rightFoot = `@bottom-left{content:${quote(foot)}}@bottom-right{content:${counter}}`
  const leftFoot = `@bottom-left{content:${counter}}@bottom-right{content:${quote(foot)}}`
  return `@page ${p.name}{${increment}${head}${rightFoot}${tabBox('right', p.tab, step)}}@page ${p.name}:left{${head}${leftFoot}${tabBox('left', p.tab, step)}}`
}

/** All page rules of a binder: mirrored gutter, running heads, feet, roman front and arabic body, tabs. */
export function binderPageRules(paper: 'letter' | 'a4', foot: string, front: readonly NamedPage[], body: readonly NamedPage[]): string {
  const { top, bottom, bound, outer } = margins
  const step = tabStep(body, paper)
  const text = 'font:400 8.5pt "Source Sans 3";color:#4d463f'
  const common = ['top-left', 'top-right', 'bottom-left', 'bottom-right'].map((b) => `@${b}{${text};${b.startsWith('top') ? 'vertical-align:bottom;padding-bottom:8pt' : 'vertical-align:top;padding-top:8pt'}}`).join('')
  return [
    `@page{size:${sizes[paper]};margin:${top}in ${outer}in ${bottom}in ${bound}in;${common}}`,
    `@page :left{margin-left:${outer}in;margin-right:${bound}in}`,
    `@page cover{counter-increment:page 0 fm;${noBoxes}}`,
    ...front.map((p) => pageRules(p, foot, 'counter(fm,lower-roman)', 'counter-increment:page 0 fm;', step)),
    ...body.map((p) => pageRules(p, foot, 'counter(page)', '', step)),
  ].join('\n')
}
