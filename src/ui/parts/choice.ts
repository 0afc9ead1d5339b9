import { html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';

export interface Choice {
  readonly options: readonly { readonly value: string; readonly name: unknown }[];
  /** What is in use, read anew each time: a choice may be refused. */
  readonly now: () => string;
  readonly choose: (value: string) => void;
  /** Where no label stands around it. */
  readonly label?: string;
  readonly id?: string;
}

/**
 * A select that shows what is in use, whatever was chosen in it before: undo, another tab and a refusal change it like
 * a hand does. Every select of the page is one.
 */
export function choice({ options, now, choose, label, id }: Choice) {
  const onChange = (event: Event): void => {
    const select = event.target as HTMLSelectElement;
    choose(select.value);
    // Where the choice was refused nothing changes, and nothing would draw it anew.
    select.value = now();
  };
  const inUse = now();
  return html`<select id=${id ?? nothing} aria-label=${label ?? nothing} @change=${onChange}>
    ${options.map(
      ({ value, name }) =>
        html`<option value=${value} ?selected=${value === inUse} .selected=${live(value === inUse)}>
          ${name}
        </option>`,
    )}
  </select>`;
}
