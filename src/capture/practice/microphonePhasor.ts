import { multiply } from '../../numeric/complex.ts';
import type { Complex } from '../../numeric/complex.ts';

/**
 * What the mouth adds to the fork's own sound, for an endless tube. Chosen so that the level rises by 6 to 20 dB
 * at the resonances of the usual forks and tubes, as on a bench: it hangs on how close the fork is held.
 */
const COUPLING_SIZE = 0.09;
/**
 * The mouth's sound follows the fork's by a quarter of a period (a monopole's pressure follows its acceleration,
 * the flow at a resonance follows the pressure), less a little for the fork's distance from the mouth.
 */
const COUPLING_PHASE_RAD = (60 / 180) * Math.PI;
/** The far end of an open tube, heard from farther away. */
const FAR_END_SHARE = 0.3;

/**
 * What the flow out of the mouth sounds like at the microphone.
 * @param motion  of the air in the mouth, 1 for an endless tube
 */
export function mouthPhasor(motion: Complex): Complex {
  return turn(motion, COUPLING_SIZE, COUPLING_PHASE_RAD);
}

/**
 * What the open far end adds. Near a resonance the flow out of it is -cos kL' times that out of the mouth, and it
 * reaches the microphone kL' later.
 * @param mouth  as `mouthPhasor` gives it
 * @param wayRad  kL', the phase over the effective length
 */
export function farEndPhasor(mouth: Complex, wayRad: number): Complex {
  return turn(mouth, -FAR_END_SHARE * Math.cos(wayRad), -wayRad);
}

function turn(phasor: Complex, size: number, angleRad: number): Complex {
  return multiply(phasor, { re: size * Math.cos(angleRad), im: size * Math.sin(angleRad) });
}
