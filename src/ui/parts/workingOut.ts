import { html, nothing } from 'lit';
import { words } from '../../words/inUse.ts';

/**
 * Said beside a result that is still that of before the last change. It takes no room of its own line and shows after a
 * moment only: what comes at once doesn't flicker.
 */
export function workingOut(isPending: boolean) {
  return isPending ? html` <span class="pending">${words.field.workingOut}</span>` : nothing;
}
