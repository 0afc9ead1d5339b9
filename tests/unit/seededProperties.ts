import fc from 'fast-check';

/**
 * Properties are tried on the same cases in every run, so that a change is what makes a test fail. `PROPERTY_SEED=…`
 * tries others; a case that fails then belongs into a test of its own.
 */
fc.configureGlobal({ seed: Number(process.env['PROPERTY_SEED'] ?? 20_261_126) });
