import type { Manual } from '../../model/manual.ts'
import type { Words } from '../../validate/schemas/words.ts'

/** Sides of the icons of a phone's home screen, pixels; they lie beside as `icon-192.png`. */
export const iconSizes = [180, 192, 512] as const

/** What a phone needs to have the site among its own programs (W3C, Web Application Manifest). */
export const manifest = ({ facility }: Manual, words: Words): string =>
  `${JSON.stringify(
    {
      name: `${facility.name}: ${words.binder.subject}`,
      short_name: facility.name,
      lang: facility.lang,
      start_url: './index.html',
      scope: './',
      display: 'standalone',
      background_color: '#ffffff',
      theme_color: '#ffffff',
      icons: iconSizes.map((size) => ({
        src: `assets/icon-${size}.png`,
        sizes: `${size}x${size}`,
        type: 'image/png',
      })),
    },
    null,
    1,
  )}\n`
