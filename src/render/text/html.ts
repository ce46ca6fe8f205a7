import Handlebars from 'handlebars'

/**
 * HTML that this project made itself or sanitised; the only kind of text that templates print as it
 * is.
 */
export type Html = Handlebars.SafeString

export const html = (text: string): Html => new Handlebars.SafeString(text)
