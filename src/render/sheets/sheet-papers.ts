import { paperLengths, paperZoom, type SheetPaper } from '../../model/papers.ts'

/** Page rules of a posted sheet; `--zoom` enlarges all of it. */
export function sheetPaperCss(paper: SheetPaper): string {
  const [width, height] = paperLengths(paper)
  return `@page{size:${width} ${height};margin:0}:root{--zoom:${paperZoom(paper)}}.sheet{width:${width};height:${height}}`
}
