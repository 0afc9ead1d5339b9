import { LitElement } from 'lit';

/** Draws every element below a root anew, where what they say has changed and nothing that they follow has. */
export function redrawAll(root: ParentNode): void {
  for (const element of root.querySelectorAll('*')) {
    if (element instanceof LitElement) element.requestUpdate();
    if (element.shadowRoot !== null) redrawAll(element.shadowRoot);
  }
}
