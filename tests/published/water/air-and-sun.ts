import {
  civilTwilight,
  julianCentury,
  riseAngle,
  sunEvent,
  sunGeometry,
} from '../../../src/compute/daylight/sun.ts'
import {
  airPressure,
  meanSaturation,
  psychrometric,
  saturation,
  saturationSlope,
  vaporFromMean,
  windAtTwoMeters,
} from '../../../src/compute/weather/air.ts'
import { hargreaves, penmanMonteith } from '../../../src/compute/weather/evapotranspiration.ts'
import {
  clearSky,
  energyToDepth,
  extraterrestrial,
  netLongWave,
  netShortWave,
  solarFromRange,
  solarFromSunshine,
  sunDistance,
} from '../../../src/compute/weather/radiation.ts'
import { daylightHours, declination, sunsetAngle } from '../../../src/model/day-length.ts'
import type { Answers, Inputs, Runner } from '../case.ts'

const radians = (degrees: number): number => (degrees * Math.PI) / 180

const vapor = (x: Inputs): number => (x.has('ea') ? x.n('ea') : saturation(x.n('tdew')))

/** The whole daily chain, from whatever the case gives. */
function chain(x: Inputs): Answers {
  const [tmax, tmin, z, j] = [x.n('tmax'), x.n('tmin'), x.n('z'), x.n('j')]
  const latitude = radians(x.n('lat'))
  const t = (tmax + tmin) / 2
  const p = airPressure(z)
  const gamma = psychrometric(p)
  const delta = saturationSlope(t)
  const es = meanSaturation(tmax, tmin)
  const ea = vapor(x)
  const u2 = x.has('u2') ? x.n('u2') : windAtTwoMeters(x.n('uz'), x.n('z_wind'))
  const ra = extraterrestrial(latitude, j)
  const nHours = daylightHours(latitude, j)
  const rs = x.has('rs')
    ? x.n('rs')
    : solarFromSunshine(
        ra,
        x.n('n'),
        nHours,
        x.has('a_s') ? x.n('a_s') : undefined,
        x.has('b_s') ? x.n('b_s') : undefined,
      )
  const rso = clearSky(ra, z)
  const rns = netShortWave(rs)
  const rnl = netLongWave(tmax, tmin, ea, rs, rso, x.has('kelvin') ? x.n('kelvin') : undefined)
  const rn = rns - rnl
  const eto = penmanMonteith({
    rn,
    g: x.has('g') ? x.n('g') : 0,
    t,
    u2,
    es,
    ea,
    delta,
    gamma,
    ...(x.has('cn') ? { cn: x.n('cn'), cd: x.n('cd') } : {}),
  })
  return {
    p,
    gamma,
    delta,
    es,
    ea,
    u2,
    ra,
    n_hours: nHours,
    rs,
    rso,
    rns,
    rnl,
    rn,
    eto,
    dr: sunDistance(j),
    decl: declination(j),
    ws: sunsetAngle(latitude, j),
  }
}

function radiation(x: Inputs): Answers {
  const [latitude, j] = [radians(x.n('lat')), x.n('j')]
  const ra = extraterrestrial(latitude, j)
  return {
    dr: sunDistance(j),
    decl: declination(j),
    ws: sunsetAngle(latitude, j),
    ra,
    ra_mm: energyToDepth(ra),
    n_hours: daylightHours(latitude, j),
  }
}

const day = (x: Inputs): string =>
  [x.n('year'), x.n('month'), x.n('day')].map((n) => String(n).padStart(2, '0')).join('-')

function geometry(t: number): Answers {
  const s = sunGeometry(t)
  return {
    mean_long: s.meanLongitude,
    mean_anom: s.meanAnomaly,
    ecc: s.eccentricity,
    eq_center: s.center,
    true_long: s.trueLongitude,
    app_long: s.apparentLongitude,
    obliq_mean: s.meanObliquity,
    obliq: s.obliquity,
    decl: s.declination,
    eot: s.equationOfTime,
  }
}

function riseAndSet(x: Inputs): Answers {
  const place = {
    date: day(x),
    latitude: x.n('lat'),
    longitude: x.n('lon'),
    zone: x.n('tz'),
  }
  const at = (side: -1 | 0 | 1, zenith?: number) => sunEvent(place, side, zenith)?.minutes
  const [rise, noon, set] = [at(-1), at(0), at(1)]
  if (rise === undefined || set === undefined) throw new Error('the sun does not rise')
  return {
    dawn_civil: at(-1, civilTwilight),
    dusk_civil: at(1, civilTwilight),
    sunrise: rise,
    noon,
    sunset: set,
    daylight_h: (set - rise) / 60,
  }
}

export const airAndSun: Readonly<Record<string, Runner>> = {
  pg: (x) => ({ p: airPressure(x.n('z')), gamma: psychrometric(airPressure(x.n('z'))) }),
  pressure: (x) => ({ p: airPressure(x.n('z')) }),
  esmean: (x) => ({
    es_max: saturation(x.n('tmax')),
    es_min: saturation(x.n('tmin')),
    es: meanSaturation(x.n('tmax'), x.n('tmin')),
  }),
  es: (x) => ({ es: saturation(x.n('t')), ea: saturation(x.n('t')) }),
  slope: (x) => ({ slope: saturationSlope(x.n('t')) }),
  ea_rhmean: (x) => ({ ea: vaporFromMean(x.n('tmax'), x.n('tmin'), x.n('rhmean') / 100) }),
  ra: radiation,
  rn: (x) => ({ rn: netShortWave(x.n('rs')) - x.n('rnl') }),
  u2: (x) => ({ u2: windAtTwoMeters(x.n('uz'), x.n('z')) }),
  rsharg: (x) => ({ rs: solarFromRange(x.n('ra'), x.n('tmax'), x.n('tmin'), x.n('k_rs')) }),
  rso: (x) => ({ rso: clearSky(x.n('ra'), x.n('z')) }),
  pm: (x) => ({
    eto: penmanMonteith({
      rn: x.n('rn'),
      g: x.n('g'),
      t: x.n('t'),
      u2: x.n('u2'),
      es: x.n('es'),
      ea: x.n('ea'),
      delta: x.n('delta'),
      gamma: x.n('gamma'),
    }),
  }),
  eto_daily: chain,
  hargreaves: (x) => {
    const ra = x.has('ra') ? x.n('ra') : extraterrestrial(radians(x.n('lat')), x.n('j'))
    return {
      ra,
      eto: hargreaves(ra, x.n('tmax'), x.n('tmin'), x.has('tmean') ? x.n('tmean') : undefined),
    }
  },
  sungeom: (x) => geometry(x.n('jc')),
  sungeom_utc: (x) => {
    const s = sunGeometry(julianCentury(day(x), x.n('utc_hour') * 60))
    return { decl: s.declination, eot: s.equationOfTime, ha: riseAngle(x.n('lat'), s.declination) }
  },
  sun: riseAndSet,
}
