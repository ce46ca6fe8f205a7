import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { iconSizes } from '../../render/site/manifest.ts'
import type { Folders } from './load-manual.ts'

/** Icons for the home screens of phones, which take no drawings. */
export const loadIcons = ({
  templates,
}: Folders): Promise<readonly { readonly path: string; readonly data: Uint8Array }[]> =>
  Promise.all(
    iconSizes.map(async (size) => {
      const name = `icon-${size}.png`
      return { path: name, data: await readFile(path.join(templates, 'icons', name)) }
    }),
  )
