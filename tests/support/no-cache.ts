import type { PrintCache } from '../../src/print/press/print-cache.ts'

/** For tests and for measuring: everything is printed anew. */
export const noCache: PrintCache = { get: (_, make) => make(), prune: async () => undefined }
