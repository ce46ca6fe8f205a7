import type { SheetPaper } from '../../model/papers.ts'

const sizes: Readonly<Record<SheetPaper, { readonly width: string; readonly height: string }>> = {
  letter: { width: '8.5in', height: '11in' },
  tabloid: { width: '11in', height: '17in' },
  a4: { width: '210mm', height: '297mm' },
  a3: { width: '297mm', height: '420mm' },
}

/**
 * Page rules of a posted sheet; `--zoom` is how much larger than letter or A4 its paper is in each
 * direction.
 */
export function sheetPaperCss(paper: SheetPaper): string {
  const { width, height } = sizes[paper]
  return `@page{size:${width} ${height};margin:0}:root{--zoom:${paper === 'tabloid' || paper === 'a3' ? 1.35 : 1}}.sheet{width:${width};height:${height}}`
}
