/** The licence of a type family, with the notice of its makers. */
export type FontLicence = { readonly family: string; readonly text: string }

const line = '='.repeat(78)

/** Ends of lines and of the text as in all other files. */
const tidy = (text: string): string => `${text.replace(/\r\n?/g, '\n').trim()}\n`

/**
 * `THIRD-PARTY-NOTICES.txt`: what others have made of what stands beside it. The fonts' licence
 * asks that its text goes wherever they go.
 */
export function thirdPartyNotices(licences: readonly FontLicence[]): string {
  const list = licences.map(({ family }) => `- ${family}\n`).join('')
  const texts = licences.map(({ family, text }) => `\n${line}\n${family}\n${line}\n\n${tidy(text)}`)
  return `Third-party notices\n\nThe site and the PDFs beside this file carry these fonts:\n\n${list}${texts.join('')}`
}
