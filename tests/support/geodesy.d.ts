declare module 'geodesy/latlon-ellipsoidal-vincenty.js' {
  /** The part that the tests use: the package has no types of its own. */
  export default class LatLon {
    constructor(latitude: number, longitude: number)
    /** Meters along the geodesic, by Vincenty's inverse formula. */
    distanceTo(other: LatLon): number
  }
}
