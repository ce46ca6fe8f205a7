/** Where a touch on a telephone number leads: it rings. Empty where there is no number. */
export const telephone = (phone: string): string =>
  phone === '' ? '' : `tel:${phone.replace(/[^\d+*#]/g, '')}`
