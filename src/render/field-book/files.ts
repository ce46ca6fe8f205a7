/** What the files of the field book and the handout are called, beside the binder and the site. */
export const fieldBookFiles = {
  book: 'field-book.pdf',
  booklet: 'field-book-booklet.pdf',
  handout: 'handout.pdf',
} as const
