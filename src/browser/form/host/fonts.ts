import type { PageFont } from '../../../model/page-data.ts'
import { bytesOf } from '../workshop/base64.ts'

/** Takes up the fonts that the page carries. */
export function takeFonts(fonts: readonly PageFont[]): void {
  for (const { data, faces } of fonts)
    for (const { family, weight, range } of faces)
      document.fonts.add(
        new FontFace(family, bytesOf(data).buffer as ArrayBuffer, {
          weight: `${weight}`,
          ...(range !== undefined && { unicodeRange: range }),
        }),
      )
}
