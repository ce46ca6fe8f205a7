/** One named page of the binder: what runs at its head, and the tab at its edge. */
export type NamedPage = { readonly name: string; readonly left: string; readonly right: string; readonly tab: { readonly text: string; readonly place: number } | undefined }

const quote = (text: string): string => `"${text.replace(/\\/g, '\\\\').replace(/"/g, '\\"').replace(/\n/g, ' ')}"`

const sizes = { letter: '8.5in 11in', a4: '210mm 297mm' } as const

/** Margins in inches: `bound` leaves room for punched holes. Both pages of a leaf have the same text width. */
export const margins = { top: 0.95, bottom: 0.85, bound: 1.15, outer: 0.75 } as const

const boxes = ['top-left', 'top-center', 'top-right', 'bottom-left', 'bottom-center', 'bottom-right', 'left-top', 'right-top']
const noBoxes = boxes.map((b) => `@${b}{content:none;background:none;border:none}`).join('')

function tabBox(side: 'left' | 'right', tab: NamedPage['tab']): string {
  const other = side === 'left' ? 'right' : 'left'
  if (!tab) return `@${side}-top{content:none;background:none}@${other}-top{content:none;background:none}`
  const margin = side === 'right' ? `${tab.place * 0.82}in 0 auto auto` : `${tab.place * 0.82}in auto auto 0`
  return `@${side}-top{content:${quote(tab.text)};background:#5c4a3a;color:#fff;width:.38in;height:.72in;margin:${margin};vertical-align:middle;text-align:center;font:600 15pt "Barlow Condensed"}@${other}-top{content:none;background:none}`
}

/** Rules of one named page, for right-hand and left-hand sides: the page number stands outside. */
function pageRules(p: NamedPage, foot: string, counter: string, increment: string): string {
  const head = `@top-left{content:${quote(p.left)}}@top-right{content:${quote(p.right)}}`
  const rightFoot = `@bottom-left{content:${quote(foot)}}@bottom-right{content:${counter}}`
  const leftFoot = `@bottom-left{content:${counter}}@bottom-right{content:${quote(foot)}}`
  return `@page ${p.name}{${increment}${head}${rightFoot}${tabBox('right', p.tab)}}@page ${p.name}:left{${head}${leftFoot}${tabBox('left', p.tab)}}`
}

/** All page rules of a binder: mirrored gutter, running heads, feet, roman front and arabic body, tabs. */
export function binderPageRules(paper: 'letter' | 'a4', foot: string, front: readonly NamedPage[], body: readonly NamedPage[]): string {
  const { top, bottom, bound, outer } = margins
  const text = 'font:400 8.5pt "Source Sans 3";color:#4d463f'
  const common = ['top-left', 'top-right', 'bottom-left', 'bottom-right'].map((b) => `@${b}{${text};${b.startsWith('top') ? 'vertical-align:bottom;padding-bottom:8pt' : 'vertical-align:top;padding-top:8pt'}}`).join('')
  return [
    `@page{size:${sizes[paper]};margin:${top}in ${outer}in ${bottom}in ${bound}in;${common}}`,
    `@page :left{margin-left:${outer}in;margin-right:${bound}in}`,
    `@page cover{counter-increment:page 0 fm;${noBoxes}}`,
    ...front.map((p) => pageRules(p, foot, 'counter(fm,lower-roman)', 'counter-increment:page 0 fm;')),
    ...body.map((p) => pageRules(p, foot, 'counter(page)', '')),
  ].join('\n')
}
