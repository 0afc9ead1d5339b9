import { css } from 'lit';

/** Looks of the column's picture. */
export const columnStyles = css`
  :host {
    position: relative;
  }
  .box {
    position: relative;
  }
  /* The handle is laid over the picture and takes no room of its own. */
  .handle-room {
    block-size: 2.75rem;
  }
  svg {
    display: block;
    inline-size: 100%;
    overflow: visible;
  }
  text {
    font: 0.8125rem var(--sans);
    fill: var(--ink);
    font-variant-numeric: tabular-nums;
  }
  .rule {
    fill: var(--rule);
    stroke: var(--rule-ink);
    stroke-width: 0.75;
  }
  .tick {
    stroke: var(--rule-ink);
    stroke-width: 1;
    shape-rendering: crispEdges;
  }
  .tick-label,
  .tick-unit {
    fill: var(--rule-ink);
  }
  .tick-unit {
    fill: var(--ink-soft);
  }
  .wall {
    fill: none;
    stroke: var(--ink);
    stroke-width: 3;
    stroke-linecap: round;
  }
  .sleeve {
    stroke: var(--ink-soft);
  }
  .piston,
  .handle {
    fill: var(--ink);
  }
  .rod {
    stroke: var(--ink);
    stroke-width: 5;
    fill: none;
  }
  .air {
    fill: var(--glass);
  }
  /* A real column answers, and only its student knows how long it is. */
  .air.answer {
    fill: var(--tone-fill);
    fill-opacity: calc(0.6 * var(--strength));
  }
  .wave {
    fill: var(--tone-fill);
    fill-opacity: calc(0.08 + 0.72 * var(--strength));
    stroke: var(--tone);
    stroke-width: 1.5;
    stroke-opacity: calc(0.35 + 0.65 * var(--strength));
  }
  .wave.displacement {
    fill-opacity: 0.05;
    stroke-dasharray: 6 4;
  }
  .node path,
  .node circle {
    fill: var(--sheet);
    stroke: var(--ink);
    stroke-width: 2;
  }
  .node text {
    font-size: 0.75rem;
  }
  .expected {
    fill: url(#hatch);
    stroke: none;
  }
  .hatch {
    stroke: var(--room);
    stroke-width: 1.5;
    stroke-opacity: 0.55;
  }
  .fork path {
    fill: none;
    stroke: var(--ink);
    stroke-width: 4;
    stroke-linecap: round;
  }
  .fork .swing {
    stroke: var(--tone-fill);
    stroke-width: 3;
  }
  .fork.away {
    opacity: 0.55;
  }
  .fork-label {
    font-weight: 600;
  }
  /* From the length's field to the tube's end. */
  .hanger {
    stroke: var(--tone);
    stroke-width: 2;
    stroke-dasharray: 2 4;
  }
  .stem .post {
    stroke: var(--tone);
    stroke-width: 3;
  }
  .stem .drop {
    stroke: var(--tone);
    stroke-width: 1.5;
    stroke-dasharray: 3 3;
  }
  .stem .head {
    fill: var(--tone);
    stroke: var(--tone);
    stroke-width: 2;
  }
  .stem.unsure .head {
    fill: var(--paper);
  }
  .stem.unsure .post {
    stroke-dasharray: 3 3;
  }
  .stem .fitted {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.5;
  }
  .stem text {
    font-weight: 600;
    paint-order: stroke;
    stroke: var(--paper);
    stroke-width: 3px;
  }
  .left-out {
    opacity: 0.45;
  }
  .outlier .head {
    stroke: var(--alert);
  }
  input[type='range'] {
    appearance: none;
    position: absolute;
    margin: 0;
    padding: 0;
    border: 0;
    background: none;
    block-size: var(--target);
    min-height: 0;
    max-width: none;
    cursor: ew-resize;
    touch-action: none;
  }
  input[type='range']::-webkit-slider-thumb {
    appearance: none;
    inline-size: 2.75rem;
    block-size: 2.25rem;
    border-radius: 0.5rem;
    border: 2px solid var(--ink);
    background: linear-gradient(90deg, transparent 45%, var(--ink) 45% 55%, transparent 55%) var(--sheet);
    cursor: ew-resize;
  }
  /* Nobody has put it anywhere yet. */
  input[type='range'].waits {
    opacity: 0.45;
  }
  input[type='range']::-moz-range-thumb {
    inline-size: 2.5rem;
    block-size: 2rem;
    border-radius: 0.5rem;
    border: 2px solid var(--ink);
    background: linear-gradient(90deg, transparent 45%, var(--ink) 45% 55%, transparent 55%) var(--sheet);
    cursor: ew-resize;
  }
  /* The ring goes around the handle, not around the whole travel. */
  input[type='range']:focus-visible {
    outline: none;
  }
  input[type='range']:focus-visible::-webkit-slider-thumb {
    outline: 3px solid var(--focus);
    outline-offset: 2px;
  }
  input[type='range']:focus-visible::-moz-range-thumb {
    outline: 3px solid var(--focus);
    outline-offset: 2px;
  }
  input[type='range']::-webkit-slider-runnable-track {
    background: none;
  }
`;
