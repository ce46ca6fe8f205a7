/** One file of a type face. */
export type Face = {
  readonly family: string
  readonly weight: number
  readonly style: 'normal' | 'italic'
  /** The npm package that it comes from, and where it lies there. */
  readonly from: string
  readonly file: string
  /** The characters that it is taken for, as CSS writes them; all of them when it is left out. */
  readonly range?: string
}

const latin = (
  family: string,
  name: string,
  weight: number,
  style: Face['style'] = 'normal',
): Face => ({
  family,
  weight,
  style,
  from: `@fontsource/${name}`,
  file: `files/${name}-latin-${weight}-${style}.woff2`,
})

/**
 * All characters that the Latin files have not, and none that they have: signs such as → and ■,
 * Greek, and the letters of other languages.
 */
export const beyondLatin =
  'U+100-130,U+132-151,U+154-2BA,U+2BD-2C5,U+2C7-2D9,U+2DB,U+2DD-2FF,U+370-1FFF,U+2020-2021,U+2070-20AB,U+20AD-2121,U+2123-2190,U+2192,U+2194-2211,U+2213-2214,U+2216-FEFE'

const whole = (
  family: string,
  weight: number,
  style: Face['style'],
  name: 'Regular' | 'It' | 'Semibold' | 'Bold',
): Face => ({
  family,
  weight,
  style,
  from: 'source-sans',
  file: `WOFF2/TTF/SourceSans3-${name}.ttf.woff2`,
  range: beyondLatin,
})

/**
 * One type family for text, one for titles and large numbers, one for formulas. What the small
 * Latin files of the first two lack comes from the whole files of Source Sans, so that nothing is
 * ever taken from the fonts that a machine happens to have.
 */
export const faces: readonly Face[] = [
  latin('Source Sans 3', 'source-sans-3', 400),
  latin('Source Sans 3', 'source-sans-3', 400, 'italic'),
  latin('Source Sans 3', 'source-sans-3', 600),
  latin('Source Sans 3', 'source-sans-3', 700),
  latin('Barlow Condensed', 'barlow-condensed', 600),
  latin('STIX Two Math', 'stix-two-math', 400),
  whole('Source Sans 3', 400, 'normal', 'Regular'),
  whole('Source Sans 3', 400, 'italic', 'It'),
  whole('Source Sans 3', 600, 'normal', 'Semibold'),
  whole('Source Sans 3', 700, 'normal', 'Bold'),
  whole('Barlow Condensed', 600, 'normal', 'Semibold'),
]

const isForScreens = ({ weight, style }: Face): boolean => weight < 700 && style === 'normal'

/**
 * The faces of a site. Those of Barlow and STIX are cut to the characters in use; Source has a
 * reserved name, so its files stay as they are, and those for letters of other languages are left
 * out where nobody needs them. Signs between words are taken from STIX. Screens do with two weights:
 * the few words in italic are upright letters that the browser slants, and bold ones are semibold.
 */
export const siteFaces: {
  readonly text: readonly Face[]
  readonly titles: Face
  readonly formulas: Face
  readonly signs: readonly Face[]
  readonly letters: readonly Face[]
} = {
  text: faces.filter(
    (f) => f.family === 'Source Sans 3' && f.range === undefined && isForScreens(f),
  ),
  titles: latin('Barlow Condensed', 'barlow-condensed', 600),
  formulas: latin('STIX Two Math', 'stix-two-math', 400),
  signs: faces
    .filter((f) => f.range !== undefined && isForScreens(f))
    .map(({ family, weight, style }) => ({
      ...latin('STIX Two Math', 'stix-two-math', 400),
      family,
      weight,
      style,
      range: beyondLatin,
    })),
  letters: faces.filter((f) => f.range !== undefined && isForScreens(f)),
}

/** Text as a file that needs no other program to unpack it; its Latin letters are what is typed. */
export const typingFace = {
  from: '@fontsource/source-sans-3',
  file: 'files/source-sans-3-latin-400-normal.woff',
} as const

/**
 * Where each family's licence stands, with the notice of its makers: all are under the SIL Open
 * Font License.
 */
export const licences = [
  { family: 'Source Sans 3', from: 'source-sans', file: 'LICENSE.md' },
  { family: 'Barlow Condensed', from: '@fontsource/barlow-condensed', file: 'LICENSE' },
  { family: 'STIX Two Math', from: '@fontsource/stix-two-math', file: 'LICENSE' },
] as const
