import { calculation } from '../../calculation.ts'
import { lapInput, offsetInput } from '../oval-inputs.ts'

/** A lap by the walked or surveyed line of the rail, against the lap that the facility states. */
export const walkedLine = calculation({
  id: 'walked-line',
  title: 'A lap by the walked line',
  about:
    "The line of the rail as it was walked or surveyed, closed on itself and measured on the ellipsoid of the satellites (WGS84), moved out to the measuring line. A phone wanders by a few steps at every point, which makes a line too long; a surveyor's receiver does not. A certificate outranks a walk.",
  sources: ['journal-geodesy-87', 'geometry'],
  inputs: {
    length: {
      symbol: 'L_w',
      label: 'length of the closed line, on WGS84',
      kind: 'distance',
      range: [200, 5000],
      howTo: 'Worked out from the points of the file, along geodesics.',
    },
    walked: {
      symbol: 'o_w',
      label: 'how far outside the rail the line was walked',
      kind: 'width',
      range: [-5, 20],
      howTo: 'Hold the receiver over the rail, or note the distance.',
    },
    offset: offsetInput,
    lap: lapInput,
  },
  outputs: {
    rail: {
      symbol: 'L_r',
      label: 'length of the rail by the walk',
      kind: 'distance',
      tex: '@length - 2\\pi\\,@walked',
    },
    lap: {
      symbol: "L'",
      label: 'one lap at the measuring line by the walk',
      kind: 'distance',
      tex: '@rail + 2\\pi\\,@offset',
    },
    off: {
      symbol: '\\Delta',
      label: 'longer than the lap in the file (shorter when below zero)',
      kind: 'distance',
      tex: "L' - @lap",
    },
    share: {
      symbol: '\\delta',
      label: 'of the lap, either way',
      kind: 'closeShare',
      tex: '\\frac{|@off|}{@lap}',
    },
  },
  compute: (x) => {
    const rail = x.length - 2 * Math.PI * x.walked
    const lap = rail + 2 * Math.PI * x.offset
    return { rail, lap, off: lap - x.lap, share: Math.abs(lap - x.lap) / x.lap }
  },
})
