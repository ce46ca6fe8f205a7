/** What the files of the field book are called, beside the binder and beside the site. */
export const fieldBookFiles = {
  book: 'field-book.pdf',
  booklet: 'field-book-booklet.pdf',
} as const
