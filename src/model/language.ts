/** The language of the library itself; every other one is a folder of texts beside it. */
export const baseLanguage = 'en'
