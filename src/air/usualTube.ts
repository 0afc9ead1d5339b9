/** Inside radius of a usual school tube, where the real one is unknown, m. Common practice, no source. */
export const USUAL_RADIUS_M = 0.0175;
