/** What the cushion is made of. */
export const materials = ['stone-dust', 'clay', 'sand-clay'] as const
export type Material = (typeof materials)[number]

/** What marks the inside of the track. */
export const rails = ['pylons', 'hub-rail'] as const
export type Rail = (typeof rails)[number]
