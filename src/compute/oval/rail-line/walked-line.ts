import { calculation } from '../../calculation.ts'
import { lapInput, offsetInput } from '../oval-inputs.ts'

/** A lap by the walked or surveyed line of the rail, against the lap that the facility states. */
export const walkedLine = calculation({
  id: 'walked-line',
  sources: ['journal-geodesy-87', 'geometry'],
  inputs: {
    length: { symbol: 'L_w', kind: 'distance', range: [200, 5000] },
    walked: { symbol: 'o_w', kind: 'width', range: [-5, 20] },
    offset: offsetInput,
    lap: lapInput,
  },
  outputs: {
    rail: { symbol: 'L_r', kind: 'distance', tex: '@length - 2\\pi\\,@walked' },
    lap: { symbol: "L'", kind: 'distance', tex: '@rail + 2\\pi\\,@offset' },
    off: { symbol: '\\Delta', kind: 'distance', tex: '@rail + 2\\pi\\,@offset - @lap' },
    share: { symbol: '\\delta', kind: 'closeShare', tex: '\\frac{|@off|}{@lap}' },
  },
  compute: (x) => {
    const rail = x.length - 2 * Math.PI * x.walked
    const lap = rail + 2 * Math.PI * x.offset
    return { rail, lap, off: lap - x.lap, share: Math.abs(lap - x.lap) / x.lap }
  },
})
