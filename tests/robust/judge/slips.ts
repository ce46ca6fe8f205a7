/** What a program writes where it has nothing to say; no word of the library looks like it. */
const slips = /\bNaN\b|\bundefined\b|\[object \w+\]|(?<![\w-])-?Infinity\b|\bfunction \w*\(|=> \{/

/** The first slip in a text. */
export const slipIn = (text: string): string | undefined => slips.exec(text)?.[0]
