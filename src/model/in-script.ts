/** Data as JSON inside a script or another element that it must not end, whatever its texts say. */
export const inScript = (data: unknown): string => JSON.stringify(data).replaceAll('<', '\\u003c')
