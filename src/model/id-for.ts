/**
 * An id made of a name, which is a name of folders and files too: small letters, digits and single
 * hyphens, 60 at most; empty where nothing of it fits.
 */
export const idFor = (name: string): string =>
  name
    .trim()
    .replace(/([a-z])([A-Z])/g, '$1-$2')
    .normalize('NFD')
    .toLowerCase()
    .replace(/[\s_]+/g, '-')
    .replace(/[^a-z0-9-]/g, '')
    .replace(/-+/g, '-')
    .replace(/^[-0-9]+|-+$/g, '')
    .slice(0, 60)
