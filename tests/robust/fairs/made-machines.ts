import type { Chance } from '../chance.ts'
import type { Entry, Said } from './said.ts'

type Make = (chance: Chance, said: Said) => Entry

const sprays: Make = (_, { often, volume, flow, length, speed, number }) => ({
  tank: volume(300, 6000),
  ...often(0.5, () => ({ usable: `${number(70, 100, 0)} %` })),
  ...often(0.7, () => ({ flow: flow(20, 600) })),
  ...often(0.7, () => ({ 'spray-width': length(6, 35) })),
  ...often(0.5, () => ({ speed: speed(2, 8) })),
  ...often(0.4, () => ({ travel: `${number(1, 20, 0)} min` })),
})

const drawn: Make = (_, { often, length, speed, number }) => ({
  width: length(5, 24),
  ...often(0.6, () => ({ overlap: length(0.3, 2) })),
  ...often(0.6, () => ({ speed: speed(2, 10) })),
  ...often(0.3, () => ({ efficiency: `${number(50, 100, 0)} %` })),
})

/** What a machine of each kind says, the ability first. */
const kinds: Readonly<Record<string, Make>> = {
  grade: (chance, said) => ({
    ...drawn(chance, said),
    'blade-angle': `${said.number(10, 45, 0)} deg`,
    passes: 1 + chance.below(4),
  }),
  draw: drawn,
  harrow: drawn,
  condition: drawn,
  screen: drawn,
  'roll-tires': (chance, { often, depth, number }) => ({
    'tire-width': depth(6, 18),
    'tires-per-side': chance.oneOf([1, 2]),
    ...often(0.5, () => ({ 'tire-pressure': `${number(30, 110, 0)} psi` })),
    ...often(0.5, () => ({ mass: `${number(6000, 30_000, 0)} lb` })),
  }),
  'roll-drum': (_, { length, number }) => ({
    width: length(3, 9),
    mass: `${number(1500, 24_000, 0)} lb`,
  }),
  spray: sprays,
  load: (_, { often, number }) => often(0.6, () => ({ bucket: `${number(4, 90, 0)} ft3` })),
  haul: (_, { often, mass }) => often(0.7, () => ({ bed: mass(2, 16) })),
  tamp: () => ({}),
}

function machine(
  can: string,
  i: number,
  chance: Chance,
  said: Said,
  days: readonly string[],
): Entry {
  const from =
    can === 'grade'
      ? chance.oneOf(['own', 'borrowed', 'hired'])
      : chance.oneOf(['own', 'own', 'borrowed'])
  return {
    id: `${can}-${i}`,
    name: `the ${can.replace('-', ' ')} machine ${i}`,
    can: [can],
    from,
    ...(from === 'own' ? {} : { owner: 'the township' }),
    ...said.often(0.25, () => ({ count: 1 + chance.below(4) })),
    ...said.often(can === 'grade' && from !== 'own' ? 0.6 : 0, () => ({
      days: [days[0] ?? '', ...(chance.happens(0.5) ? ['2027-06-30', '2027-07-01'] : [])].slice(
        0,
        1 + chance.below(3),
      ),
    })),
    ...(kinds[can]?.(chance, said) ?? {}),
    ...said.often(0.4, () => ({ cost: `$${said.number(5, 150, 0)}/h` })),
  }
}

/** From nothing at all to twenty machines; up to five water trucks that are not alike. */
export function equipmentOf(chance: Chance, said: Said, days: readonly string[]): readonly Entry[] {
  const share = chance.oneOf([0, 0.2, 0.5, 0.8, 1])
  const cans = Object.keys(kinds).flatMap((can) => {
    if (!chance.happens(share)) return []
    const most = can === 'spray' ? 5 : 2
    return Array.from({ length: chance.happens(0.7) ? 1 : 1 + chance.below(most) }, () => can)
  })
  return cans.map((can, i) => machine(can, i + 1, chance, said, days))
}
