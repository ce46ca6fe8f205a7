import type { PageFont } from '../../../model/page-data.ts'
import { bytesOf } from '../workshop/base64.ts'

/** Takes up the fonts that the page carries. */
export function takeFonts(fonts: readonly PageFont[]): void {
  for (const { family, weight, data } of fonts) {
    const face = new FontFace(family, bytesOf(data).buffer as ArrayBuffer, { weight: `${weight}` })
    document.fonts.add(face)
  }
}
