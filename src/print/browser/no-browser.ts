/** One browser that was tried, and why it is of no use. */
export type Attempt = { readonly name: string; readonly reason: string }

/**
 * No browser can print here. Not an exception: a manual without its PDFs is still a manual, and the
 * caller decides.
 */
export type NoBrowser = {
  readonly kind: 'no-browser'
  /** Several lines: what is needed, how to get it, what was tried. */
  readonly message: string
  readonly attempts: readonly Attempt[]
}

const advice = `Printing needs Google Chrome, Chromium or Microsoft Edge (version 131 or newer):
  Debian, Ubuntu  apt-get install chromium
  Fedora          dnf install chromium
  macOS, Windows  install Google Chrome
  or set OVALKEEP_BROWSER to the path of the browser's executable`

/** Telling lines of a failed start; the rest is the browser's own log. */
const telling =
  /error while loading shared libraries|No usable sandbox|ENOENT|EACCES|cannot execute|too old/

/** @returns one line that says why a start failed. */
export const failureReason = (error: unknown): string => {
  const lines = (error instanceof Error ? error.message : String(error))
    .split('\n')
    .map((line) => line.trim())
  return lines.find((line) => telling.test(line)) ?? lines.find(Boolean) ?? 'unknown'
}

const listed = (attempts: readonly Attempt[]): string =>
  attempts.map(({ name, reason }) => `  ${name}: ${reason}`).join('\n')

export const noBrowser = (attempts: readonly Attempt[]): NoBrowser => ({
  kind: 'no-browser',
  message: `No browser for printing.\n${advice}\nTried:\n${listed(attempts)}`,
  attempts,
})

/**
 * A setting that does not work is an error of its own: printing with another browser than asked for
 * would hide it.
 */
export const badSetting = (attempt: Attempt): NoBrowser => ({
  kind: 'no-browser',
  message: `OVALKEEP_BROWSER names a browser that does not work.\n${listed([attempt])}\nCorrect it, or unset it to use an installed browser.`,
  attempts: [attempt],
})
